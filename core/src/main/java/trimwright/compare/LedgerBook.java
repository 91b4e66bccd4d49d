package trimwright.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.segment.OffFoil;
import trimwright.segment.Phase;
import trimwright.segment.Pieces;
import trimwright.segment.Turn;

/**
 * Keeps the time ledger of a leg. With progress p and the reference's progress p*, the total is the integral of
 * 1 - p/p*; a ladder of rates r0 = p, r1, ..., p* splits it into lines, the integrals of (r_i - r_(i-1))/p*, which add up
 * by telescoping. Instants without p* go whole into one line.
 */
final class LedgerBook {
    private final LegProgress progress;
    private final boolean[] offFoil;
    private final boolean[] turning;
    private final double steady;

    /** @param steadyElsewhere steady progress over that of the reference where the leg itself has no phase (-) */
    LedgerBook(LegProgress progress, Pieces pieces, int size, double steadyElsewhere) {
        this.progress = progress;
        this.offFoil = new boolean[size];
        this.turning = new boolean[size];
        for (OffFoil spell : pieces.offFoil()) {
            Arrays.fill(offFoil, spell.span().from(), spell.span().to(), true);
        }
        for (Turn turn : pieces.turns()) {
            Turn.Recovery recovery = turn.recovery();
            int until =
                    recovery == null ? turn.span().to() : Math.max(turn.span().to(), recovery.until());
            Arrays.fill(turning, turn.span().from(), until, true);
        }
        double own = steady(progress, pieces.phases());
        this.steady = Double.isNaN(own) ? steadyElsewhere : own;
    }

    /** Mean of progress over that of the reference in the phases of the leg, NaN without any. */
    static double steady(LegProgress progress, List<Phase> phases) {
        double sum = 0;
        int count = 0;
        for (Phase phase : phases) {
            if (!phase.span().overlaps(progress.leg().span())) {
                continue;
            }
            for (int i = phase.span().from(); i < phase.span().to(); i++) {
                double ratio = progress.made(i) / progress.wanted(i);
                if (!Double.isNaN(ratio)) {
                    sum += ratio;
                    count++;
                }
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    LegLedger keep() {
        double[] loss = new double[Cause.values().length];
        double total = 0;
        for (int i = progress.leg().span().from(); i < progress.leg().span().to(); i++) {
            double p = progress.made(i);
            double wanted = progress.wanted(i);
            if (Double.isNaN(p) || Double.isNaN(wanted)) {
                loss[Cause.UNJUDGED.ordinal()] += progress.step();
                total += progress.step();
            } else {
                total += (1 - p / wanted) * progress.step();
                climb(i, p, wanted, loss);
            }
        }
        List<LegLedger.Line> lines = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            lines.add(new LegLedger.Line(cause, loss[cause.ordinal()]));
        }
        return new LegLedger(progress.leg(), total, lines);
    }

    /** Adds what each rung of the ladder puts back at one instant. */
    private void climb(int i, double p, double wanted, double[] loss) {
        double rate = p;
        if (offFoil[i]) {
            rate = add(loss, Cause.OFF_FOIL, rate, steady * wanted, wanted);
        } else if (turning[i]) {
            rate = add(loss, Cause.TURNS_FREE, rate, steady * wanted, wanted);
        } else {
            double atAngle = progress.wantedAtAngle(i);
            if (!Double.isNaN(atAngle)) {
                rate = add(loss, Cause.ANGLE, rate, rate + wanted - atAngle, wanted);
            }
        }
        add(loss, Cause.REMAINING, rate, wanted, wanted);
    }

    private double add(double[] loss, Cause cause, double from, double to, double wanted) {
        loss[cause.ordinal()] += (to - from) / wanted * progress.step();
        return to;
    }
}
