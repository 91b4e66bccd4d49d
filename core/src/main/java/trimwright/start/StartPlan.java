package trimwright.start;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a crew should know before a start, for one wind and one course across the line.
 *
 * @param setup what it was computed for
 * @param onFoils slowest that she was held on the foils, null where no share of power did
 * @param offFoils slowest off them, null where no share of power took her off
 * @param gathering seconds to the line from each of some speeds, slowest first
 * @param losing ways to lose seconds
 * @param otherTack the same from the other tack: the seconds count from the driver's word to turn
 */
public record StartPlan(
        StartSetup setup,
        @Nullable Held onFoils,
        @Nullable Held offFoils,
        List<Gathering> gathering,
        List<Losing> losing,
        List<Gathering> otherTack) {
    public StartPlan {
        gathering = List.copyOf(gathering);
        losing = List.copyOf(losing);
        otherTack = List.copyOf(otherTack);
    }

    /**
     * Gathering speed at full power.
     *
     * @param from how she was held before
     * @param reached seconds until each distance of {@link StartTrial#DISTANCES}
     * @param seconds until full speed
     * @param metres along the course across the line until then
     * @param across metres across that course until then, positive away from the wind
     * @param touched share of the runs in which a hull touched again
     * @param capsized share of the runs in which she went over
     */
    public record Gathering(
            Held from,
            List<Spread> reached,
            Spread seconds,
            Spread metres,
            Spread across,
            double touched,
            double capsized) {
        public Gathering {
            reached = List.copyOf(reached);
        }
    }

    /**
     * A way to lose some seconds.
     *
     * @param delay what is done
     * @param wanted seconds to lose, in the median
     * @param hold how long it is done (s)
     * @param lost seconds lost in gusts
     * @param regained seconds from its beginning until full speed again
     * @param least slowest (m/s)
     * @param across metres away from the wind at the end
     * @param touched share of the runs in which a hull touched
     * @param capsized share of the runs in which she went over
     */
    public record Losing(
            Delay delay,
            double wanted,
            double hold,
            Spread lost,
            Spread regained,
            Spread least,
            Spread across,
            double touched,
            double capsized) {
        /** Between this and another length, where so much is lost. */
        Losing toward(Losing other, double seconds) {
            double share = (seconds - wanted) / (other.wanted - wanted);
            return new Losing(
                    delay,
                    seconds,
                    mix(hold, other.hold, share),
                    lost.toward(other.lost, share),
                    regained.toward(other.regained, share),
                    least.toward(other.least, share),
                    across.toward(other.across, share),
                    mix(touched, other.touched, share),
                    mix(capsized, other.capsized, share));
        }

        private static double mix(double a, double b, double share) {
            return a + share * (b - a);
        }
    }
}
