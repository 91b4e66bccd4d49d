package trimwright.raceday;

import java.util.List;
import java.util.Locale;
import trimwright.sim.DockReading;
import trimwright.sim.Reading;

/** What the gauges of a wing wrote at the dock: those of {@link WingTable} and the flap at half height; a silent gauge leaves its cell empty. */
final class DockTable {
    static final String MAPPING = WingTable.MAPPING + """

            [[column]]
            name = "flap_middle_deg"
            channel = "sails.wing.flapMiddle"
            unit = "deg"
            """;

    private DockTable() {}

    /** @param zeroNanos time of the begin (ns since 1970, UTC) */
    static String of(List<DockReading> readings, long zeroNanos) {
        StringBuilder text = new StringBuilder(
                "time_utc,camber_deg,twist_deg,sheet_deg,sheet_load_n,ride_height_m,flap_middle_deg\n");
        for (DockReading reading : readings) {
            Reading.Wing wing = reading.reading().wing();
            text.append(WingTable.stamp(NmeaLog.nanos(reading.reading(), zeroNanos)));
            cell(Math.toDegrees(wing.camber()), 2, text);
            cell(Math.toDegrees(wing.twist()), 2, text);
            cell(Math.toDegrees(wing.sheet()), 2, text);
            cell(wing.sheetLoad(), 0, text);
            cell(wing.rideHeight(), 2, text);
            cell(Math.toDegrees(reading.flapMiddle()), 2, text);
            text.append('\n');
        }
        return text.toString();
    }

    private static void cell(double value, int decimals, StringBuilder text) {
        text.append(',');
        if (!Double.isNaN(value)) {
            text.append(String.format(Locale.ROOT, "%." + decimals + "f", value));
        }
    }
}
