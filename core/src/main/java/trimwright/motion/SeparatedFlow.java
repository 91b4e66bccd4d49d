package trimwright.motion;

import java.util.Arrays;
import trimwright.arithmetic.Exponential;

/**
 * How much of each strip's flow has let go of the wing: a state with a past. An attached strip lets go where it is a little past its
 * stall, half of its flow at once ({@code NLR-MP-79034}: lift falls from 3.19 to 2.03 in a degree, 0.55 of the way to the plate), all of it
 * the farther past; a separated one takes hold only where it is well inside. Each goes there in a few half chords of travel, as models
 * of dynamic stall have it ({@code DYNAMIC-STALL} in docs/sources.md). Keeps the past, so it is for one wing in one run.
 */
final class SeparatedFlow {
    /**
     * Stall margins at which attached flow lets go, and at which flow that has let go takes hold again, and width of either (rad):
     * chosen; published stall breaks within a degree and has hysteresis. With less width the instant would hang on the time step.
     */
    private static final double LETS_GO = Math.toRadians(-2);

    private static final double TAKES_HOLD = Math.toRadians(3);
    private static final double WIDTH = Math.toRadians(1.5);

    /** Share that lets go at once (-), and angle past stall at which all has (rad): chosen. */
    private static final double AT_ONCE = 0.5;

    private static final double ALL = Math.toRadians(-20);

    /** Travel over which it goes there (half chords): Leishman and Beddoes, from memory, for letting go; twice that back, chosen. */
    private static final double LETTING_GO = 3;

    private static final double TAKING_HOLD = 6;

    private final double[] share;

    SeparatedFlow(int strips) {
        share = new double[strips];
    }

    /** One that goes on from here by itself. */
    SeparatedFlow copy() {
        SeparatedFlow other = new SeparatedFlow(share.length);
        System.arraycopy(share, 0, other.share, 0, share.length);
        return other;
    }

    /** All attached. */
    void forget() {
        Arrays.fill(share, 0);
    }

    /** Share of each strip's flow that is separated (-); not to be changed. */
    double[] share() {
        return share;
    }

    /** Whether nothing is separated, nor was lately. */
    boolean isAttached() {
        for (double s : share) {
            if (s > 0.01) {
                return false;
            }
        }
        return true;
    }

    /**
     * Goes on.
     *
     * @param margin stall margin of the strip (rad)
     * @param halfChords travelled since the last time
     */
    void note(int strip, double margin, double halfChords) {
        // The more of the flow has let go, the farther inside its stall a strip has to come.
        double edge = LETS_GO + (TAKES_HOLD - LETS_GO) * Math.min(1, share[strip] / AT_ONCE);
        double lost = Math.max(0, Math.min(1, (edge - margin) / WIDTH + 0.5));
        double deeper = Math.max(0, Math.min(1, (margin - LETS_GO) / (ALL - LETS_GO)));
        double wanted = lost * (AT_ONCE + (1 - AT_ONCE) * deeper);
        double travel = wanted > share[strip] ? LETTING_GO : TAKING_HOLD;
        share[strip] += (wanted - share[strip]) * (1 - Exponential.of(-halfChords / travel));
        if (share[strip] < 1e-6) {
            share[strip] = 0;
        }
    }
}
