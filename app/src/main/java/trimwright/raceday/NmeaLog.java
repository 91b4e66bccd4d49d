package trimwright.raceday;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import trimwright.course.LocalPlane;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.sim.Reading;
import trimwright.units.Units;

/**
 * What a boat's logger wrote: at each reading RMC, HDT, ROT, MWV and XDR, without those whose instrument was silent. The
 * speed through the water is not logged: a foiling boat has no wetted log.
 */
final class NmeaLog {
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("ddMMyy", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final double SECONDS_A_MINUTE = 60;

    private NmeaLog() {}

    /** @param zeroNanos time of the day's zero (ns since 1970, UTC) */
    static String of(List<Reading> readings, LocalPlane plane, long zeroNanos) {
        StringBuilder text = new StringBuilder(readings.size() * 260);
        for (Reading reading : readings) {
            fix(reading, plane, zeroNanos, text);
            attitude(reading.attitude(), text);
            wind(reading.wind(), text);
        }
        return text.toString();
    }

    /** When a reading was taken (ns since 1970), on the grid of hundredths that the log has. */
    static long nanos(Reading reading, long zeroNanos) {
        return zeroNanos + Math.round(reading.time() * 100) * 10_000_000L;
    }

    private static void fix(Reading reading, LocalPlane plane, long zeroNanos, StringBuilder text) {
        Reading.Fix fix = reading.fix();
        if (Double.isNaN(fix.north())) {
            return;
        }
        long nanos = nanos(reading, zeroNanos);
        Position place = plane.toEarth(new PlanePoint(fix.north(), fix.east()));
        text.append(NmeaSentence.of(String.format(
                Locale.ROOT,
                "GPRMC,%s,A,%s,%s,%.2f,%s,%s,,,A",
                NmeaSentence.time(nanos),
                NmeaSentence.latitude(Math.toDegrees(place.latitude())),
                NmeaSentence.longitude(Math.toDegrees(place.longitude())),
                Units.toKnots(fix.speed()),
                NmeaSentence.direction(fix.course()),
                DAY.format(Instant.ofEpochSecond(Math.floorDiv(nanos, 1_000_000_000L))))));
    }

    private static void attitude(Reading.Attitude attitude, StringBuilder text) {
        if (Double.isNaN(attitude.heading())) {
            return;
        }
        text.append(NmeaSentence.of("HEHDT," + NmeaSentence.direction(attitude.heading()) + ",T"));
        text.append(NmeaSentence.of(
                String.format(Locale.ROOT, "TIROT,%.1f,A", Math.toDegrees(attitude.rateOfTurn()) * SECONDS_A_MINUTE)));
        String angles = transducer(attitude.roll(), "ROLL") + transducer(attitude.pitch(), "PITCH");
        if (!angles.isEmpty()) {
            text.append(NmeaSentence.of("IIXDR" + angles));
        }
    }

    /** One angle of a transducer sentence; nothing of one that is silent. */
    private static String transducer(double angle, String name) {
        return Double.isNaN(angle) ? "" : String.format(Locale.ROOT, ",A,%.1f,D,%s", Math.toDegrees(angle), name);
    }

    private static void wind(Reading.Wind wind, StringBuilder text) {
        if (Double.isNaN(wind.speed())) {
            return;
        }
        text.append(NmeaSentence.of(String.format(
                Locale.ROOT,
                "WIMWV,%s,R,%.1f,N,A",
                NmeaSentence.direction(wind.angle()),
                Units.toKnots(wind.speed()))));
    }
}
