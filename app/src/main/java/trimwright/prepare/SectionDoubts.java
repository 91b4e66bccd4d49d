package trimwright.prepare;

import java.util.ArrayList;
import java.util.List;

/** Where tables of computed sections are known to be doubtful; why stands in docs/theory/section-tables.md. */
final class SectionDoubts {
    /** Flap angle (rad) under which lift against the flap is too low: the wake takes the wrong side of its nose; chosen. */
    private static final double SMALL_FLAP = Math.toRadians(8);

    /** Flap angle (rad) from which the flap may separate within a table's step; chosen. */
    private static final double LARGE_FLAP = Math.toRadians(27.5);

    /** Reynolds number under which a straight section's bubble decides its stall, about the tables' lowest; chosen. */
    private static final double SLOW = 7e5;

    /** Flap angle (rad) that counts as straight there, and angle of attack (rad) from which it matters; chosen. */
    private static final double STRAIGHT = Math.toRadians(2.5);

    private static final double STEEP = Math.toRadians(9);

    /** Reynolds number (-) under which the curve that the most lift comes from has no values (PressureRule). */
    private static final double BELOW_RULE = 1e6;

    /** Margin to stall (rad) within which the most lift matters; chosen: a puff's change of angle. */
    private static final double NEAR_STALL = Math.toRadians(4);

    private SectionDoubts() {}

    /** Keys of the doubts that at least one strip raises; none for sections that are not from tables. */
    static List<String> of(SolvedWing wing) {
        boolean against = false;
        boolean large = false;
        boolean slow = false;
        boolean belowRule = false;
        boolean stalled = false;
        for (int i = 0;
                wing.source() == SectionSource.COMPUTED && i < wing.wing().strips();
                i++) {
            double flap = wing.flow().flapAngle(i);
            double lift = wing.flow().cl(i);
            against |= flap * lift < 0 && Math.abs(flap) < SMALL_FLAP;
            large |= flap * lift > 0 && Math.abs(flap) > LARGE_FLAP;
            slow |= wing.reynolds(i) < SLOW
                    && Math.abs(flap) < STRAIGHT
                    && Math.abs(wing.flow().alpha(i)) > STEEP;
            belowRule |= wing.reynolds(i) < BELOW_RULE && wing.flow().stallMargin(i) < NEAR_STALL;
            stalled |= wing.flow().stallMargin(i) < 0;
        }
        List<String> doubts = new ArrayList<>();
        if (against) {
            doubts.add("small_flap_against");
        }
        if (large) {
            doubts.add("large_flap");
        }
        if (slow) {
            doubts.add("slow_straight_flap");
        }
        if (belowRule) {
            doubts.add("slow_near_stall");
        }
        if (stalled) {
            doubts.add("past_stall");
        }
        return doubts;
    }
}
