package trimwright.track;

import java.util.Map;
import trimwright.units.Angles;

/**
 * What the samples of a channel can be. All limits are chosen, wide enough for any boat: they find broken sensors, not
 * bold sailing.
 *
 * @param shape how values of the channel are compared
 * @param least smallest possible value, SI
 * @param most largest possible value, SI
 * @param fastest largest possible change (SI per second)
 * @param step change that may come at once, whatever the time: a sensor's resolution and noise (SI)
 * @param stillSeconds how long the value may stay exactly the same (s)
 * @param still whether a constant value of zero is a finding too
 */
public record ChannelRule(
        Shape shape, double least, double most, double fastest, double step, double stillSeconds, Still still) {
    /** How values compare. */
    public enum Shape {
        /** Plain numbers. */
        PLAIN,
        /** Angles relative to the boat, (-pi, pi]. */
        SIGNED,
        /** Directions, [0, 2 pi). */
        COMPASS
    }

    /** Which constant values speak of a frozen sensor. */
    public enum Still {
        /** None: the quantity may rest. */
        ALLOWED,
        /** Any but zero: a boat may lie still. */
        ZERO_ALLOWED,
        /** Any. */
        NEVER
    }

    private static final double TURN = 2 * Math.PI;
    private static final ChannelRule ANY = new ChannelRule(
            Shape.PLAIN, -Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE, 0, Double.MAX_VALUE, Still.ALLOWED);

    private static final ChannelRule WIND_ANGLE =
            new ChannelRule(Shape.SIGNED, -Math.PI, Math.PI, Math.PI, 1.0, 60, Still.NEVER);
    private static final ChannelRule WIND_SPEED = plain(0, 60, 15, 3, 60, Still.NEVER);
    private static final ChannelRule DIRECTION =
            new ChannelRule(Shape.COMPASS, 0, TURN, Math.PI, 1.0, 120, Still.NEVER);
    private static final ChannelRule HEADING = new ChannelRule(Shape.COMPASS, 0, TURN, 1.5, 0.2, 120, Still.NEVER);
    private static final ChannelRule BOAT_SPEED = plain(0, 40, 6, 1, 120, Still.ZERO_ALLOWED);
    private static final ChannelRule ATTITUDE =
            new ChannelRule(Shape.SIGNED, -Math.PI / 2, Math.PI / 2, 1.5, 0.1, 120, Still.ZERO_ALLOWED);
    private static final ChannelRule WING_ANGLE =
            new ChannelRule(Shape.SIGNED, -1.6, 1.6, 1.5, 0.1, Double.MAX_VALUE, Still.ALLOWED);

    private static final Map<String, ChannelRule> RULES = Map.ofEntries(
            Map.entry(Paths.AWA, WIND_ANGLE),
            Map.entry(Paths.TWA_WATER, WIND_ANGLE),
            Map.entry(Paths.TWA_GROUND, WIND_ANGLE),
            Map.entry(Paths.AWS, WIND_SPEED),
            Map.entry(Paths.TWS, WIND_SPEED),
            Map.entry(Paths.WIND_SPEED_OVER_GROUND, WIND_SPEED),
            Map.entry(Paths.TWD, DIRECTION),
            Map.entry(Paths.TWD_MAGNETIC, DIRECTION),
            Map.entry(Paths.HEADING, HEADING),
            Map.entry(Paths.HEADING_MAGNETIC, HEADING),
            Map.entry(Paths.STW, BOAT_SPEED),
            Map.entry(Paths.SOG, BOAT_SPEED),
            // At rest a course over ground is noise: any change goes.
            Map.entry(Paths.COG, angle(Shape.COMPASS, TURN)),
            Map.entry(Paths.COG_MAGNETIC, angle(Shape.COMPASS, TURN)),
            Map.entry(Paths.ROLL, ATTITUDE),
            Map.entry(Paths.PITCH, ATTITUDE),
            Map.entry(Paths.RUDDER, angle(Shape.SIGNED, Math.PI / 2)),
            Map.entry(Paths.LEEWAY, angle(Shape.SIGNED, Math.PI / 2)),
            Map.entry(Paths.VARIATION, angle(Shape.SIGNED, Math.PI)),
            Map.entry(Paths.DEVIATION, angle(Shape.SIGNED, Math.PI)),
            Map.entry(Paths.RATE_OF_TURN, plain(-3, 3, Double.MAX_VALUE, 0, 120, Still.ZERO_ALLOWED)),
            // 1e-5 rad of latitude are 64 m; the step is a hundred metres.
            Map.entry(Paths.LATITUDE, plain(-Math.PI / 2, Math.PI / 2, 1e-5, 1.6e-5, Double.MAX_VALUE, Still.ALLOWED)),
            Map.entry(
                    Paths.LONGITUDE,
                    new ChannelRule(Shape.SIGNED, -Math.PI, Math.PI, 4e-5, 6.4e-5, Double.MAX_VALUE, Still.ALLOWED)),
            Map.entry(Paths.AIR_TEMPERATURE, plain(220, 330, 5, 3, Double.MAX_VALUE, Still.ALLOWED)),
            Map.entry(Paths.WATER_TEMPERATURE, plain(268, 320, 5, 3, Double.MAX_VALUE, Still.ALLOWED)),
            Map.entry(Paths.AIR_PRESSURE, plain(85_000, 110_000, 200, 500, Double.MAX_VALUE, Still.ALLOWED)),
            Map.entry(Paths.CAMBER, WING_ANGLE),
            Map.entry(Paths.TWIST, WING_ANGLE),
            Map.entry(Paths.FLAP_MIDDLE, WING_ANGLE),
            Map.entry(Paths.SHEET, angle(Shape.SIGNED, Math.PI)),
            Map.entry(Paths.SHEET_LOAD, plain(-5_000, 200_000, Double.MAX_VALUE, 0, 120, Still.ZERO_ALLOWED)),
            Map.entry(Paths.RIDE_HEIGHT, plain(-5, 10, 8, 0.5, 120, Still.ZERO_ALLOWED)));

    /** The rule of a path; a name behind an {@code @} does not matter. Without a rule anything goes. */
    public static ChannelRule of(String path) {
        int at = path.indexOf('@');
        return RULES.getOrDefault(at < 0 ? path : path.substring(0, at), ANY);
    }

    private static ChannelRule plain(
            double least, double most, double fastest, double step, double stillSeconds, Still still) {
        return new ChannelRule(Shape.PLAIN, least, most, fastest, step, stillSeconds, still);
    }

    private static ChannelRule angle(Shape shape, double most) {
        return new ChannelRule(
                shape, shape == Shape.COMPASS ? 0 : -most, most, Double.MAX_VALUE, 0, Double.MAX_VALUE, Still.ALLOWED);
    }

    /** Size of the change between two values. */
    double distance(double a, double b) {
        return Math.abs(shape == Shape.PLAIN ? a - b : Angles.difference(a, b));
    }

    /** The value in the range that its shape has. */
    public double normal(double value) {
        return switch (shape) {
            case PLAIN -> value;
            case SIGNED -> Angles.signed(value);
            case COMPASS -> Angles.compass(value);
        };
    }
}
