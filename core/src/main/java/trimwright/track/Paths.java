package trimwright.track;

import java.util.Set;

/**
 * Names of channels. Where the open standard Signal K has a path it is used as it stands; {@code sails.wing.*} is our
 * own branch, as that standard has none for a rigid wing. SI and radians throughout.
 */
public final class Paths {
    public static final String AWA = "environment.wind.angleApparent";
    public static final String AWS = "environment.wind.speedApparent";
    /** As another device computed it, relative to the bow; kept apart from our own. */
    public static final String TWA_WATER = "environment.wind.angleTrueWater";

    /** As another device computed it from speed over ground, relative to the bow. */
    public static final String TWA_GROUND = "environment.wind.angleTrueGround";

    public static final String TWS = "environment.wind.speedTrue";
    public static final String TWD = "environment.wind.directionTrue";
    public static final String TWD_MAGNETIC = "environment.wind.directionMagnetic";
    public static final String WIND_SPEED_OVER_GROUND = "environment.wind.speedOverGround";
    public static final String STW = "navigation.speedThroughWater";
    public static final String SOG = "navigation.speedOverGround";
    public static final String COG = "navigation.courseOverGroundTrue";
    public static final String COG_MAGNETIC = "navigation.courseOverGroundMagnetic";
    public static final String HEADING = "navigation.headingTrue";
    public static final String HEADING_MAGNETIC = "navigation.headingMagnetic";
    public static final String VARIATION = "navigation.magneticVariation";
    public static final String DEVIATION = "navigation.magneticDeviation";
    public static final String RATE_OF_TURN = "navigation.rateOfTurn";
    public static final String LATITUDE = "navigation.position.latitude";
    public static final String LONGITUDE = "navigation.position.longitude";
    /** Positive: list to starboard. */
    public static final String ROLL = "navigation.attitude.roll";
    /** Positive: bow up. */
    public static final String PITCH = "navigation.attitude.pitch";

    public static final String LEEWAY = "navigation.leewayAngle";
    public static final String RUDDER = "steering.rudderAngle";
    public static final String AIR_TEMPERATURE = "environment.outside.temperature";
    public static final String AIR_PRESSURE = "environment.outside.pressure";
    public static final String WATER_TEMPERATURE = "environment.water.temperature";
    /** Flap angle to the main element at the foot; positive: trailing edge to starboard, as set for wind from starboard. */
    public static final String CAMBER = "sails.wing.camber";
    /** Flap angle at the foot less flap angle at the head, signed as the camber. */
    public static final String TWIST = "sails.wing.twist";
    /** Flap angle to the main element at half the wing's height, signed as the camber. */
    public static final String FLAP_MIDDLE = "sails.wing.flapMiddle";
    /** Main element to the centreline; positive: trailing edge to port, as eased with wind from starboard. */
    public static final String SHEET = "sails.wing.sheet";
    /** Load at the wing (N). */
    public static final String SHEET_LOAD = "sails.wing.sheetLoad";
    /** Bottom of the hulls above the water (m). */
    public static final String RIDE_HEIGHT = "navigation.rideHeight";

    /** Heeling moment as load cells give it (N m), free of the tack. */
    public static final String HEELING_MOMENT = "sails.wing.heelingMoment";

    private static final Set<String> ALL = Set.of(
            AWA,
            AWS,
            TWA_WATER,
            TWA_GROUND,
            TWS,
            TWD,
            TWD_MAGNETIC,
            WIND_SPEED_OVER_GROUND,
            STW,
            SOG,
            COG,
            COG_MAGNETIC,
            HEADING,
            HEADING_MAGNETIC,
            VARIATION,
            DEVIATION,
            RATE_OF_TURN,
            LATITUDE,
            LONGITUDE,
            ROLL,
            PITCH,
            LEEWAY,
            RUDDER,
            AIR_TEMPERATURE,
            AIR_PRESSURE,
            WATER_TEMPERATURE,
            CAMBER,
            TWIST,
            FLAP_MIDDLE,
            SHEET,
            SHEET_LOAD,
            RIDE_HEIGHT,
            HEELING_MOMENT);

    private Paths() {}

    /** Every path named here. */
    public static Set<String> all() {
        return ALL;
    }
}
