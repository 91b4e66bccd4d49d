package trimwright.web;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trimwright.debrief.TargetSpeeds;
import trimwright.track.Paths;
import trimwright.units.Units;

/**
 * How a channel is shown: in which lane, in which unit.
 *
 * @param lane lane of the chart
 * @param unit what people read: kn, deg, deg_c, hpa, m, n, or empty where the channel's unit is not known here
 * @param turn how its values go round
 */
record ChannelFace(String lane, String unit, Turn turn) {
    /** What happens at the ends of a range of angles. */
    enum Turn {
        /** Nothing: a plain number. */
        NONE,
        /** 0 to 360 deg. */
        COMPASS,
        /** -180 to 180 deg, port to starboard. */
        SIGNED
    }

    /** Lanes from top to bottom. */
    static final List<String> LANES = List.of(
            "speed",
            "wind_speed",
            "wind_angle",
            "direction",
            "attitude",
            "ride",
            "wing",
            "load",
            "steering",
            "surroundings");

    private static final Map<String, ChannelFace> KNOWN = new TreeMap<>();

    private static void know(String lane, String unit, Turn turn, String... paths) {
        for (String path : paths) {
            KNOWN.put(path, new ChannelFace(lane, unit, turn));
        }
    }

    static {
        know("speed", "kn", Turn.NONE, Paths.SOG, Paths.STW);
        know("wind_speed", "kn", Turn.NONE, Paths.AWS, Paths.TWS, Paths.WIND_SPEED_OVER_GROUND);
        know("wind_angle", "deg", Turn.SIGNED, Paths.AWA, Paths.TWA_WATER);
        know("direction", "deg", Turn.COMPASS, Paths.HEADING, Paths.HEADING_MAGNETIC, Paths.COG, Paths.COG_MAGNETIC);
        know("direction", "deg", Turn.COMPASS, Paths.TWD, Paths.TWD_MAGNETIC);
        know("attitude", "deg", Turn.NONE, Paths.ROLL, Paths.PITCH);
        know("ride", "m", Turn.NONE, Paths.RIDE_HEIGHT);
        know("wing", "deg", Turn.NONE, Paths.CAMBER, Paths.TWIST, Paths.FLAP_MIDDLE, Paths.SHEET);
        know("load", "n", Turn.NONE, Paths.SHEET_LOAD);
        know("steering", "deg", Turn.NONE, Paths.RUDDER, Paths.LEEWAY, Paths.RATE_OF_TURN);
        know("wind_speed", "kn", Turn.NONE, "debrief.tws", "debrief.raw_tws");
        know("wind_angle", "deg", Turn.SIGNED, "debrief.twa", "debrief.course_twa");
        know("direction", "deg", Turn.COMPASS, "debrief.twd", "debrief.raw_twd");
        know("speed", "kn", Turn.NONE, "debrief.vmg", TargetSpeeds.PATH);
        know("surroundings", "deg_c", Turn.NONE, Paths.AIR_TEMPERATURE, Paths.WATER_TEMPERATURE);
        know("surroundings", "hpa", Turn.NONE, Paths.AIR_PRESSURE);
    }

    /** Of a channel's path; what another source gave of the same quantity ({@code path@source}) is shown alike. */
    static ChannelFace of(String path) {
        int at = path.indexOf('@');
        return KNOWN.getOrDefault(at < 0 ? path : path.substring(0, at), new ChannelFace("other", "", Turn.NONE));
    }

    /** Whether anything is known here of the channel. */
    static boolean isKnown(String path) {
        return !of(path).lane().equals("other");
    }

    /** From the inner unit to what people read. */
    double shown(double value) {
        return switch (unit) {
            case "kn" -> Units.toKnots(value);
            case "deg" -> Units.toDegrees(value);
            case "deg_c" -> Units.toCelsius(value);
            case "hpa" -> value / 100;
            default -> value;
        };
    }
}
