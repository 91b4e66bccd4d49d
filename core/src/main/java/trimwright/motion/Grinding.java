package trimwright.motion;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Handling;
import trimwright.power.CriticalPower;

/**
 * The people on the handles through a run: what they can give now, and what they have left. Oil is served first, the sheet has
 * the rest. Each has a store of work above what can be kept up for long; as it empties the most that they can give falls in a
 * straight line from the peak to that (MORTON-1996), and it fills again as {@link CriticalPower} has it. One for a boat and run.
 */
final class Grinding {
    /** One grinder in the short bursts of trimming (W): between the 230 held for long and a published peak of 1,420. */
    private static final double BURST = 450;

    private static final int COUNT_UNSAID = 2;

    /** Over which time the oil of one turn is pumped (s): chosen, a turn from the word to the new trim. */
    private static final double TURN_SECONDS = 8;

    private final int count;
    private final @Nullable CriticalPower one;
    private final double oilStraight;
    private final double oilTurn;
    private double left;

    /** @param handling of the boat file; null where it does not say: then nobody tires */
    Grinding(@Nullable Handling handling) {
        count = handling == null ? COUNT_UNSAID : handling.grinders().count();
        one = handling == null ? null : CriticalPower.of(handling.grinders());
        double straight = 0;
        double turn = 0;
        if (handling != null) {
            for (Handling.OilUser user : handling.oilUsers()) {
                straight += user.straight() / handling.oilEfficiency();
                turn += user.turn() / handling.oilEfficiency();
            }
        }
        oilStraight = straight / count;
        oilTurn = turn / count / TURN_SECONDS;
        left = one == null ? 0 : one.store();
    }

    /** One that goes on from here by itself. */
    Grinding copy(@Nullable Handling handling) {
        Grinding other = new Grinding(handling);
        other.left = left;
        return other;
    }

    /** Most that all of them give to the sheet now (W). */
    double forSheet() {
        if (one == null) {
            return count * BURST;
        }
        double most = one.power() + left / one.store() * (one.peak() - one.power());
        return count * Math.max(0, Math.min(BURST, most - oilStraight));
    }

    /** Goes on by a step (s) in which all of them gave that to the sheet (W), in a turn or not. */
    void work(double sheet, boolean isTurning, double dt) {
        if (one != null) {
            double each = sheet / count + (isTurning ? oilTurn : oilStraight);
            left = Math.max(0, one.left(left, each, dt));
        }
    }

    /** What is left of the store of each (-): 1 rested; 1 where the boat file does not say. */
    double rested() {
        return one == null ? 1 : left / one.store();
    }
}
