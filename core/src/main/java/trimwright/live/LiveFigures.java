package trimwright.live;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.segment.Tack;
import trimwright.wind.SpeedSource;

/**
 * A boat at an instant. NaN where a figure is not known or not fresh.
 *
 * @param timeNanos of the instant (ns since 1970 UTC by the recorder's clock)
 * @param load moment and heel against their aims
 * @param faults instruments that were heard and cannot be used now
 */
public record LiveFigures(
        long timeNanos,
        LiveState state,
        Motion motion,
        Wind wind,
        Aim aim,
        Trim trim,
        Load load,
        List<SensorFault> faults) {
    public LiveFigures {
        faults = List.copyOf(faults);
    }

    /**
     * How she moves.
     *
     * @param speed the one that is judged (m/s)
     * @param source of the speed, null without one
     * @param heading true (rad)
     * @param vmg mean of ten seconds, to windward or leeward, positive (m/s)
     * @param heel to windward positive (rad)
     * @param rideHeight (m)
     */
    public record Motion(
            double speed, @Nullable SpeedSource source, double heading, double vmg, double heel, double rideHeight) {}

    /**
     * Wind.
     *
     * @param tws filtered, as the debrief gives it (m/s)
     * @param twd filtered (rad)
     * @param twa from the course, positive from starboard (rad)
     * @param aws as read (m/s)
     * @param awa from the bow, positive from starboard (rad)
     * @param tack null where the side is not known
     */
    public record Wind(
            double tws,
            double twd,
            double twa,
            double aws,
            double awa,
            @Nullable Tack tack) {}

    /**
     * Speed against what is reachable at the angle sailed.
     *
     * @param target mean of the last 30 s of wind and angle (m/s), at the aim where aims are known
     * @param reachable targets passed through the boat's response, mean of 10 s; NaN where no response is known
     * @param share mean speed of 10 s over {@code reachable}, or over {@code target} where no response is known
     * @param tail shares of the last 20 s, oldest first (-)
     */
    public record Aim(double target, Estimate reachable, Estimate share, List<Double> tail) {
        public Aim {
            tail = List.copyOf(tail);
        }
    }

    /**
     * A figure with its standard error, in one unit.
     *
     * @param value NaN where not known
     * @param error of the value, above or at zero; NaN where not known
     */
    public record Estimate(double value, double error) {
        /** Not known. */
        public static final Estimate NONE = new Estimate(Double.NaN, Double.NaN);

        /** Two standard errors below. */
        public double low() {
            return value - 2 * error;
        }

        /** Two standard errors above. */
        public double high() {
            return value + 2 * error;
        }
    }

    /**
     * What is carried.
     *
     * @param moment heeling moment as load cells give it (N m); NaN without them, and then nothing may call for more or less
     * @param aim moment to carry (N m), below the limit by what the wind's unrest asks where aims are known
     * @param limit largest moment that the boat file's limits allow in this wind and attitude (N m)
     * @param heelAim (rad), positive to windward
     * @param turbulence of the wind over the last minutes, sensors' scatter included (-); NaN while too little is known
     */
    public record Load(Estimate moment, double aim, double limit, double heelAim, double turbulence) {
        /** Nothing known. */
        public static final Load NONE = new Load(Estimate.NONE, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    /** The wing's three controls against their bands at the target, moved to the aim where aims are known. */
    public record Trim(Gauge camber, Gauge twist, Gauge sheet) {}
}
