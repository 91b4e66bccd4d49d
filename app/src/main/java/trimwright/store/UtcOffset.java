package trimwright.store;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import trimwright.units.Units;

/**
 * How far the time of day on board is from UTC, and how that is known. One offset for a whole session: a clock that is
 * put forward at sea would make times ambiguous.
 *
 * @param seconds added to UTC, positive east
 */
public record UtcOffset(int seconds, From from) {
    /** UTC, where nothing else is known. */
    public static final UtcOffset NONE = new UtcOffset(0, From.NONE);

    private static final double ZONE_WIDTH_DEG = 15.0;
    private static final int HOUR = 3600;

    /** How an offset is known. */
    public enum From {
        /** The mapping of a table states the zone of its times. */
        LOG,
        /** The nautical zone: the whole hour nearest to the longitude. */
        LONGITUDE,
        /** Neither: UTC. */
        NONE
    }

    /** What a zone says at that instant; UTC says nothing about where the boat is. */
    static UtcOffset of(ZoneId zone, Instant at) {
        int seconds = zone.getRules().getOffset(at).getTotalSeconds();
        return seconds == 0 ? NONE : new UtcOffset(seconds, From.LOG);
    }

    /** Of the nautical zone: hours of longitude, 15 degrees each, rounded to the whole hour. */
    static UtcOffset atLongitude(double longitude) {
        return new UtcOffset(HOUR * (int) Math.rint(Units.toDegrees(longitude) / ZONE_WIDTH_DEG), From.LONGITUDE);
    }

    /** {@code UTC+02:00}; {@code UTC} without an offset. */
    public String name() {
        if (seconds == 0) {
            return "UTC";
        }
        int minutes = Math.abs(seconds) / 60;
        return String.format(Locale.ROOT, "UTC%s%02d:%02d", seconds < 0 ? "-" : "+", minutes / 60, minutes % 60);
    }

    /** The word of {@link #from()} in files. */
    String fromWord() {
        return from.name().toLowerCase(Locale.ROOT);
    }
}
