package trimwright.raceday;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import trimwright.sim.Reading;

/** What the gauges of a boat's wing wrote, as a table of text, and the mapping that says how to read it. */
final class WingTable {
    static final String MAPPING = """
            schema = "csv-map/1"
            group = "wing"
            boat_file_suffix = "-wing"

            [time]
            format = "iso"

            [[time.column]]
            name = "time_utc"

            [[column]]
            name = "camber_deg"
            channel = "sails.wing.camber"
            unit = "deg"

            [[column]]
            name = "twist_deg"
            channel = "sails.wing.twist"
            unit = "deg"

            [[column]]
            name = "sheet_deg"
            channel = "sails.wing.sheet"
            unit = "deg"

            [[column]]
            name = "sheet_load_n"
            channel = "sails.wing.sheetLoad"
            unit = "N"

            [[column]]
            name = "ride_height_m"
            channel = "navigation.rideHeight"
            unit = "m"
            """;

    private static final long MILLI = 1_000_000L;

    private WingTable() {}

    /** @param zeroNanos time of the day's zero (ns since 1970, UTC) */
    static String of(List<Reading> readings, long zeroNanos) {
        StringBuilder text = new StringBuilder("time_utc,camber_deg,twist_deg,sheet_deg,sheet_load_n,ride_height_m\n");
        for (Reading reading : readings) {
            Reading.Wing wing = reading.wing();
            if (!Double.isNaN(wing.camber())) {
                text.append(String.format(
                        Locale.ROOT,
                        "%s,%.2f,%.2f,%.2f,%.0f,%.2f\n",
                        stamp(NmeaLog.nanos(reading, zeroNanos)),
                        Math.toDegrees(wing.camber()),
                        Math.toDegrees(wing.twist()),
                        Math.toDegrees(wing.sheet()),
                        wing.sheetLoad(),
                        wing.rideHeight()));
            }
        }
        return text.toString();
    }

    static String stamp(long nanos) {
        Instant time = Instant.ofEpochMilli(Math.floorDiv(nanos, MILLI));
        // An Instant's own text drops the decimals of whole seconds.
        String whole = Instant.ofEpochSecond(time.getEpochSecond()).toString();
        return String.format(
                Locale.ROOT, "%s.%03dZ", whole.substring(0, whole.length() - 1), time.getNano() / 1_000_000);
    }
}
