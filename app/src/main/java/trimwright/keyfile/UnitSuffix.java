package trimwright.keyfile;

import java.util.Locale;
import trimwright.units.Units;

/** The units that a key may end in, with the way into SI. */
public enum UnitSuffix {
    M,
    M2,
    KG,
    N,
    W,
    J,
    S,
    RATIO,
    DEG,
    DEG_PER_S,
    DEG_PER_MIN,
    M_PER_S,
    KN,
    /** A plain word or number: no unit. */
    NONE;

    private static final double SECONDS_A_MINUTE = 60;

    /** The unit that the key's last words name. */
    public static UnitSuffix of(String key) {
        String words = "_" + key.toUpperCase(Locale.ROOT);
        UnitSuffix found = NONE;
        for (UnitSuffix suffix : values()) {
            boolean isLonger = suffix.name().length() > found.name().length();
            if (words.endsWith("_" + suffix.name()) && (found == NONE || isLonger)) {
                found = suffix;
            }
        }
        return found;
    }

    /** A value of this unit in SI. */
    public double toSi(double value) {
        return switch (this) {
            case DEG, DEG_PER_S -> Units.fromDegrees(value);
            case DEG_PER_MIN -> Units.fromDegrees(value) / SECONDS_A_MINUTE;
            case KN -> Units.fromKnots(value);
            case M, M2, KG, N, W, J, S, M_PER_S, RATIO, NONE -> value;
        };
    }

    /** An SI value in this unit. */
    public double fromSi(double value) {
        return switch (this) {
            case DEG, DEG_PER_S -> Units.toDegrees(value);
            case DEG_PER_MIN -> Units.toDegrees(value) * SECONDS_A_MINUTE;
            case KN -> Units.toKnots(value);
            case M, M2, KG, N, W, J, S, M_PER_S, RATIO, NONE -> value;
        };
    }

    /** As written behind a number: {@code m2}, or nothing for ratios and plain numbers. */
    public String symbol() {
        return this == RATIO || this == NONE
                ? ""
                : name().toLowerCase(Locale.ROOT).replace("_per_", "/");
    }
}
