package trimwright.ingest.n2k;

import java.util.List;
import trimwright.track.Paths;

/**
 * What a message holds that is read here. The order is also the order of preference where several of one device give the
 * same quantity. Fields and scales as the open description of the messages lists them (docs/sources.md, CANBOAT). Winds
 * and headings of each reference are a layout of their own, so that one can never be taken for the other.
 */
enum N2kLayout {
    POSITION("position", 0.1, Paths.LATITUDE, Paths.LONGITUDE),
    FIX("fix", 1, Paths.LATITUDE, Paths.LONGITUDE),
    COURSE_TRUE("course-true", 0.25, Paths.SOG, Paths.COG),
    COURSE_MAGNETIC("course-magnetic", 0.25, Paths.SOG, Paths.COG_MAGNETIC),
    HEADING_TRUE("heading-true", 0.1, Paths.HEADING, Paths.VARIATION),
    HEADING_MAGNETIC("heading-magnetic", 0.1, Paths.HEADING_MAGNETIC, Paths.DEVIATION, Paths.VARIATION),
    VARIATION("variation", Double.NaN, Paths.VARIATION),
    SPEED("speed", 1, Paths.STW, Paths.SOG),
    WIND_APPARENT("wind-apparent", 0.1, Paths.AWA, Paths.AWS),
    WIND_WATER("wind-true-water", 0.1, Paths.TWA_WATER, Paths.TWS),
    WIND_BOAT("wind-true-boat", 0.1, Paths.TWA_GROUND, Paths.WIND_SPEED_OVER_GROUND),
    WIND_NORTH("wind-north", 0.1, Paths.TWD, Paths.WIND_SPEED_OVER_GROUND),
    WIND_MAGNETIC("wind-magnetic", 0.1, Paths.TWD_MAGNETIC, Paths.WIND_SPEED_OVER_GROUND),
    TURN("rate-of-turn", 0.1, Paths.RATE_OF_TURN),
    ATTITUDE("attitude", 1, Paths.ROLL, Paths.PITCH),
    RUDDER("rudder", 0.1, Paths.RUDDER),
    LEEWAY("leeway", Double.NaN, Paths.LEEWAY),
    /** Date and time, no value. */
    TIME("time", 1);

    /** Values that the longest layout has. */
    static final int MOST_VALUES = 3;

    private final String word;
    private final double interval;
    // The checker does not know that List.of gives a list that cannot change.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> paths;

    N2kLayout(String word, double interval, String... paths) {
        this.word = word;
        this.interval = interval;
        this.paths = List.of(paths);
    }

    /** For names of groups. */
    String word() {
        return word;
    }

    /** Seconds between two of a device, nominal; NaN where there is none. */
    double interval() {
        return interval;
    }

    List<String> paths() {
        return paths;
    }
}
