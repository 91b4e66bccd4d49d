package trimwright.raceday;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.course.LocalPlane;
import trimwright.course.Position;
import trimwright.sim.DockFaults;
import trimwright.sim.DockReading;
import trimwright.sim.DockStretch;
import trimwright.sim.SensorFaults;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** The morning of a simulated day: ten minutes at the dock of one boat, her logs, and what is wrong with her instruments as the truth. */
public final class DockDay {
    /** Whose morning it is. */
    public static final String BOAT = "Dunlin";

    /** When the list is begun, well before the race. */
    public static final Instant BEGIN = Instant.parse("2027-03-06T11:30:00Z");

    /** A harbour that is nowhere: open ocean. */
    private static final Position PLACE = new Position(Math.toRadians(31.21), Math.toRadians(-41.49));

    private static final long SECOND = 1_000_000_000L;

    private DockDay() {}

    /**
     * Writes the logs and the truth; what lies at these paths is overwritten.
     *
     * @param folder where the files go
     */
    public static List<Path> write(Boat boat, WingSpec wing, int seed, Path folder) {
        if (boat.handling() == null) {
            throw new UserInputException(Texts.of("raceday.no_handling", boat.title()));
        }
        try {
            return DayFiles.write(files(boat, wing, seed), folder);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("raceday.unwritable", folder, String.valueOf(e.getMessage())), e);
        }
    }

    private static Map<String, String> files(Boat boat, WingSpec wing, int seed) {
        DockFaults faults = DockFaults.draw(seed);
        List<DockReading> readings = DockStretch.of(boat, wing, faults, seed, BOAT);
        long zero = BEGIN.getEpochSecond() * SECOND;
        String name = BOAT.toLowerCase(Locale.ROOT);
        Map<String, String> files = new TreeMap<>();
        files.put(
                "logs/" + name + ".nmea",
                NmeaLog.of(readings.stream().map(DockReading::reading).toList(), new LocalPlane(PLACE), zero));
        files.put("logs/" + name + "-wing.csv", DockTable.of(readings, zero));
        files.put("wing-map.toml", DockTable.MAPPING);
        files.put("truth/" + name + "-dock.csv", truth(faults));
        return files;
    }

    /** What was planted: {@code gauge,fault,value}, angles in degrees. */
    private static String truth(DockFaults faults) {
        StringBuilder text = new StringBuilder("gauge,fault,value\n");
        for (DockFaults.Plain plain : faults.plain()) {
            row(word(plain.gauge().name()), word(plain.kind().name()), "", text);
        }
        SensorFaults offsets = faults.offsets();
        row("roll", "zero_deg", degrees(offsets.attitude().roll()), text);
        row("pitch", "zero_deg", degrees(offsets.attitude().pitch()), text);
        row("camber", "zero_deg", degrees(offsets.wing().camber()), text);
        row("twist", "zero_deg", degrees(offsets.wing().twist()), text);
        row("flap_middle", "zero_deg", degrees(faults.flapMiddle()), text);
        row("sheet", "zero_deg", degrees(offsets.wing().sheet()), text);
        row("wind", "zero_deg", degrees(offsets.wind().angle()), text);
        row("sheet_load", "factor_ratio", number(offsets.wing().loadFactor()), text);
        row("camber", "rate_ratio", number(faults.camberRate()), text);
        row("twist", "rate_ratio", number(faults.twistRate()), text);
        return text.toString();
    }

    private static void row(String gauge, String fault, String value, StringBuilder text) {
        text.append(gauge).append(',').append(fault).append(',').append(value).append('\n');
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private static String degrees(double radians) {
        return number(Math.toDegrees(radians));
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.4f", value + 0.0);
    }
}
