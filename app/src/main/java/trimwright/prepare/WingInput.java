package trimwright.prepare;

import trimwright.boat.TrimRange;
import trimwright.boat.WingSpec;
import trimwright.units.Units;

/** A number that a wing's state is given by, in the unit that people type. Its key is that of {@code wing/1}. */
public enum WingInput {
    /** At 10 m above the water. */
    TRUE_WIND_SPEED("tws_kn"),
    /** From the course through the water; negative: wind from port. */
    TRUE_WIND_ANGLE("twa_deg"),
    /** Through the water. */
    BOAT_SPEED("boat_speed_kn"),
    LEEWAY("leeway_deg"),
    /** The same at all heights. */
    APPARENT_WIND_SPEED("aws_kn"),
    /** From the bow; negative: wind from port. */
    APPARENT_WIND_ANGLE("awa_deg"),
    CAMBER("camber_deg"),
    TWIST("twist_deg"),
    /** Share of the twist reached at half the span. */
    TWIST_MID_RATIO("twist_mid_ratio"),
    SHEET("sheet_deg"),
    HEEL("heel_deg"),
    RIDE_HEIGHT("ride_height_m"),
    PITCH("pitch_deg");

    private final String key;

    WingInput(String key) {
        this.key = key;
    }

    /** Name with the unit, as files and addresses have it. */
    public String key() {
        return key;
    }

    /** Name on the command line. */
    public String option() {
        return "--" + key.substring(0, key.lastIndexOf('_')).replace('_', '-');
    }

    /** Least value for that wing, in the unit of the key. */
    public double low(WingSpec wing) {
        return switch (this) {
            case TRUE_WIND_SPEED, BOAT_SPEED, APPARENT_WIND_SPEED, RIDE_HEIGHT -> 0;
            case TWIST_MID_RATIO -> 0.2;
            default -> -high(wing);
        };
    }

    /** Largest value for that wing, in the unit of the key. The wing's own controls go as far as the boat file says. */
    public double high(WingSpec wing) {
        TrimRange trim = wing.trim();
        return switch (this) {
            case TRUE_WIND_SPEED, BOAT_SPEED -> 60;
            case APPARENT_WIND_SPEED -> 120;
            case TRUE_WIND_ANGLE, APPARENT_WIND_ANGLE -> 180;
            case LEEWAY -> 15;
            case CAMBER -> degrees(trim.camberMax());
            case TWIST -> degrees(trim.twistMax());
            case TWIST_MID_RATIO -> 0.8;
            case SHEET -> degrees(trim.sheetMax());
            case HEEL -> 30;
            case RIDE_HEIGHT, PITCH -> 10;
        };
    }

    /** As the boat file says it, without the rounding error of the way through radians. */
    private static double degrees(double radians) {
        return Math.rint(Units.toDegrees(radians) * 1e9) / 1e9;
    }

    /** A value in the unit of the key, in SI. */
    public double toSi(double typed) {
        return key.endsWith("_kn") ? Units.fromKnots(typed) : key.endsWith("_deg") ? Units.fromDegrees(typed) : typed;
    }

    /** A value in SI, in the unit of the key. */
    public double fromSi(double value) {
        return key.endsWith("_kn") ? Units.toKnots(value) : key.endsWith("_deg") ? Units.toDegrees(value) : value;
    }
}
