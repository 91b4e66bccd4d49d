package trimwright.debrief;

import trimwright.segment.Span;
import trimwright.segment.Tack;
import trimwright.units.Units;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * A quantity as people read it: key in files, unit, and whether its sign is taken free of the tack.
 *
 * @param key whole words, without the unit
 */
record Shown(Quantity quantity, String key, Unit unit, Sign sign) {
    enum Unit {
        KN("kn"),
        DEG("deg"),
        M("m"),
        N("n");

        private final String suffix;

        Unit(String suffix) {
            this.suffix = suffix;
        }
    }

    enum Sign {
        AS_IT_STANDS,
        /** Times the tack: heel to windward, leeward leeway, eased sheet and depth to leeward are positive. */
        FREE_OF_TACK
    }

    String keyWithUnit() {
        return key + "_" + unit.suffix;
    }

    /** Mean over a span, in the unit; NaN without samples. */
    double mean(WindTrack track, Span span, Tack tack) {
        double mean = inUnit(track.mean(quantity, span.from(), span.to()));
        return sign == Sign.FREE_OF_TACK ? mean * tack.sign() : mean;
    }

    /** Standard deviation over a span, in the unit; NaN without samples. */
    double deviation(WindTrack track, Span span) {
        return inUnit(track.deviation(quantity, span.from(), span.to()));
    }

    /** Of an inner value, sign as it stands. */
    double inUnit(double value) {
        return switch (unit) {
            case KN -> Units.toKnots(value);
            case DEG -> Units.toDegrees(value);
            case M, N -> value;
        };
    }
}
