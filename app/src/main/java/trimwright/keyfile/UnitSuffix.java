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
    S,
    RATIO,
    DEG,
    KN,
    /** A plain word or number: no unit. */
    NONE;

    /** The unit that the key's last word names. */
    public static UnitSuffix of(String key) {
        String last = key.substring(key.lastIndexOf('_') + 1).toUpperCase(Locale.ROOT);
        for (UnitSuffix suffix : values()) {
            if (suffix.name().equals(last)) {
                return suffix;
            }
        }
        return NONE;
    }

    /** A value of this unit in SI. */
    public double toSi(double value) {
        return switch (this) {
            case DEG -> Units.fromDegrees(value);
            case KN -> Units.fromKnots(value);
            case M, M2, KG, N, W, S, RATIO, NONE -> value;
        };
    }

    /** An SI value in this unit. */
    public double fromSi(double value) {
        return switch (this) {
            case DEG -> Units.toDegrees(value);
            case KN -> Units.toKnots(value);
            case M, M2, KG, N, W, S, RATIO, NONE -> value;
        };
    }

    /** As written behind a number: {@code m2}, or nothing for ratios and plain numbers. */
    public String symbol() {
        return this == RATIO || this == NONE ? "" : name().toLowerCase(Locale.ROOT);
    }
}
