package trimwright.motion;

import java.util.Arrays;
import trimwright.arithmetic.Exponential;

/**
 * How a thin section's lift follows a sudden change of its flow in steady, incompressible, attached sailing: share of the new steady
 * lift after so many half chords of travel, 1 - sum a exp(-b s). Sources: WAGNER-JONES and KUSSNER-JONES in docs/sources.md. Left
 * out: the force of the air's own inertia, which lasts as long as the change; separated flow.
 */
public final class LiftLag {
    /** After a change of the section's own incidence, flap or motion: Jones's approximation of Wagner's function. */
    public static final LiftLag WAGNER = new LiftLag(new double[] {0.165, 0.335}, new double[] {0.0455, 0.3});

    /** After the edge of a gust has reached its nose: Jones's approximation of Kuessner's function. */
    public static final LiftLag KUSSNER =
            new LiftLag(new double[] {0.236, 0.513, 0.171}, new double[] {0.058, 0.364, 2.42});

    /** As {@link #WAGNER} for a wing of aspect ratio six, over its own final lift: Jones's finite wing. */
    public static final LiftLag WAGNER_SIX = new LiftLag(new double[] {0.361}, new double[] {0.381});

    /** As {@link #KUSSNER} for a wing of aspect ratio six, over its own final lift. */
    public static final LiftLag KUSSNER_SIX =
            new LiftLag(new double[] {0.448, 0.272, 0.193}, new double[] {0.290, 0.725, 3.00});

    private final double[] share;
    private final double[] rate;
    private final double atOnce;

    private LiftLag(double[] share, double[] rate) {
        this.share = share;
        this.rate = rate;
        double late = 0;
        for (double a : share) {
            late += a;
        }
        atOnce = 1 - late;
    }

    /** Share of the new steady lift (-) after a travel of so many half chords, not negative. */
    public double after(double halfChords) {
        double sum = 1;
        for (int i = 0; i < share.length; i++) {
            sum -= share[i] * StrictMath.exp(-rate[i] * halfChords);
        }
        return sum;
    }

    /** Memory of one quantity that acts with this lag. */
    Memory of(double first) {
        return new Memory(first);
    }

    /** One quantity and what of its past still acts. */
    final class Memory {
        private final double[] behind = new double[share.length];

        private Memory(double first) {
            Arrays.fill(behind, first);
        }

        /** One with the same past. */
        Memory copy() {
            Memory other = new Memory(0);
            System.arraycopy(behind, 0, other.behind, 0, behind.length);
            return other;
        }

        /** What acts when the quantity has now this value and so many half chords were travelled since the last call. */
        double act(double now, double halfChords) {
            double sum = atOnce * now;
            for (int i = 0; i < behind.length; i++) {
                behind[i] += (now - behind[i]) * (1 - Exponential.of(-rate[i] * halfChords));
                sum += share[i] * behind[i];
            }
            return sum;
        }
    }
}
