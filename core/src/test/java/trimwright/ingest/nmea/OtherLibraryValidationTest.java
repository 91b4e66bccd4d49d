package trimwright.ingest.nmea;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static trimwright.ingest.nmea.NmeaText.decoded;
import static trimwright.ingest.nmea.NmeaText.sentence;

import java.util.Locale;
import java.util.Random;
import java.util.function.BiConsumer;
import java.util.function.Function;
import net.sf.marineapi.nmea.parser.SentenceFactory;
import net.sf.marineapi.nmea.sentence.GGASentence;
import net.sf.marineapi.nmea.sentence.GLLSentence;
import net.sf.marineapi.nmea.sentence.HDGSentence;
import net.sf.marineapi.nmea.sentence.HeadingSentence;
import net.sf.marineapi.nmea.sentence.MTWSentence;
import net.sf.marineapi.nmea.sentence.MWDSentence;
import net.sf.marineapi.nmea.sentence.MWVSentence;
import net.sf.marineapi.nmea.sentence.PositionSentence;
import net.sf.marineapi.nmea.sentence.RMCSentence;
import net.sf.marineapi.nmea.sentence.ROTSentence;
import net.sf.marineapi.nmea.sentence.TimeSentence;
import net.sf.marineapi.nmea.sentence.VHWSentence;
import net.sf.marineapi.nmea.sentence.VTGSentence;
import net.sf.marineapi.nmea.sentence.VWRSentence;
import net.sf.marineapi.nmea.sentence.VWTSentence;
import net.sf.marineapi.nmea.sentence.XDRSentence;
import net.sf.marineapi.nmea.util.CompassPoint;
import net.sf.marineapi.nmea.util.Direction;
import net.sf.marineapi.nmea.util.Measurement;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;
import trimwright.track.Paths;

/** Drawn sentences of each kind, field by field as another library reads them. Units are turned to SI here. */
class OtherLibraryValidationTest {
    private static final int EACH = 40;
    private static final double KNOT = 1852.0 / 3600.0;
    private static final double DEGREE = Math.PI / 180;

    private final Random random = new Random(7);

    @Test
    @ValidatedAgainst(source = "marineapi", where = "drawn RMC, GGA, GLL", tolerance = "rounding: 1e-9 of each value")
    void positions() {
        compare(
                RMCSentence.class,
                () -> "GPRMC," + time() + ",A," + position() + "," + speed() + "," + compass() + ",310827,"
                        + variation() + ",A",
                (other, ours) -> {
                    comparePosition(other, ours);
                    same(other.getSpeed() * KNOT, ours.value(Paths.SOG));
                    sameAngle(other.getCourse(), ours.value(Paths.COG));
                    int east = other.getDirectionOfVariation() == CompassPoint.EAST ? 1 : -1;
                    // The library gives easterly variation as negative, whatever the letter says.
                    sameAngle(east * Math.abs(other.getVariation()), ours.value(Paths.VARIATION));
                    compareTime(other, ours);
                });
        compare(
                GGASentence.class,
                () -> "GPGGA," + time() + "," + position() + ",1,10,0.9,1.0,M,,M,,",
                (other, ours) -> {
                    comparePosition(other, ours);
                    compareTime(other, ours);
                });
        compare(GLLSentence.class, () -> "GPGLL," + position() + "," + time() + ",A,A", (other, ours) -> {
            comparePosition(other, ours);
            compareTime(other, ours);
        });
    }

    @Test
    @ValidatedAgainst(
            source = "marineapi",
            where = "drawn VTG, VHW, HDT, HDM, HDG, ROT",
            tolerance = "rounding: 1e-9 of each value")
    void motionAndHeading() {
        compare(
                VTGSentence.class,
                () -> "GPVTG," + compass() + ",T," + compass() + ",M," + speed() + ",N,,K,A",
                (other, ours) -> {
                    sameAngle(other.getTrueCourse(), ours.value(Paths.COG));
                    sameAngle(other.getMagneticCourse(), ours.value(Paths.COG_MAGNETIC));
                    same(other.getSpeedKnots() * KNOT, ours.value(Paths.SOG));
                });
        compare(
                VHWSentence.class,
                () -> "IIVHW," + compass() + ",T," + compass() + ",M," + speed() + ",N,,K",
                (other, ours) -> {
                    sameAngle(other.getHeading(), ours.value(Paths.HEADING));
                    sameAngle(other.getMagneticHeading(), ours.value(Paths.HEADING_MAGNETIC));
                    same(other.getSpeedKnots() * KNOT, ours.value(Paths.STW));
                });
        compare(
                VHWSentence.class,
                () -> "IIVHW,,T,,M,,N," + speed() + ",K",
                (other, ours) -> same(other.getSpeedKmh() / 3.6, ours.value(Paths.STW)));
        compare(
                HeadingSentence.class,
                () -> "HEHDT," + compass() + ",T",
                (other, ours) -> sameAngle(other.getHeading(), ours.value(Paths.HEADING)));
        compare(
                HeadingSentence.class,
                () -> "HCHDM," + compass() + ",M",
                (other, ours) -> sameAngle(other.getHeading(), ours.value(Paths.HEADING_MAGNETIC)));
        compare(
                HDGSentence.class,
                () -> "HCHDG," + compass() + "," + variation() + "," + variation(),
                (other, ours) -> {
                    sameAngle(other.getDeviation(), ours.value(Paths.DEVIATION));
                    sameAngle(other.getVariation(), ours.value(Paths.VARIATION));
                });
        compare(
                ROTSentence.class,
                () -> "HEROT," + text("%.1f", 200 * random.nextDouble() - 100) + ",A",
                (other, ours) -> same(other.getRateOfTurn() * DEGREE / 60, ours.value(Paths.RATE_OF_TURN)));
    }

    @Test
    @ValidatedAgainst(
            source = "marineapi",
            where = "drawn MWV, VWR, VWT, MWD, MTW, XDR",
            tolerance = "rounding: 1e-9 of each value")
    void windAndWater() {
        compare(
                MWVSentence.class,
                () -> "WIMWV," + compass() + ",R," + speed() + "," + oneOf("N", "M", "K") + ",A",
                (other, ours) -> {
                    sameAngle(other.getAngle(), ours.value(Paths.AWA));
                    double unit = switch (other.getSpeedUnit()) {
                        case METER -> 1;
                        case KILOMETERS -> 1 / 3.6;
                        default -> KNOT;
                    };
                    same(other.getSpeed() * unit, ours.value(Paths.AWS));
                });
        compare(MWVSentence.class, () -> "WIMWV," + compass() + ",T," + speed() + ",N,A", (other, ours) -> {
            sameAngle(other.getAngle(), ours.value(Paths.TWA_WATER));
            same(other.getSpeed() * KNOT, ours.value(Paths.TWS));
        });
        compare(
                VWRSentence.class,
                () -> "IIVWR," + bow() + "," + oneOf("L", "R") + "," + speed() + ",N,,M,,K",
                (other, ours) -> {
                    int side = other.getDirectionLeftRight() == Direction.LEFT ? -1 : 1;
                    sameAngle(side * other.getWindAngle(), ours.value(Paths.AWA));
                    same(other.getSpeedKnots() * KNOT, ours.value(Paths.AWS));
                });
        compare(
                VWTSentence.class,
                () -> "IIVWT," + bow() + "," + oneOf("L", "R") + "," + speed() + ",N,,M,,K",
                (other, ours) -> {
                    int side = other.getDirectionLeftRight() == Direction.LEFT ? -1 : 1;
                    sameAngle(side * other.getWindAngle(), ours.value(Paths.TWA_WATER));
                    same(other.getSpeedKnots() * KNOT, ours.value(Paths.TWS));
                });
        compare(
                MWDSentence.class,
                () -> "WIMWD," + compass() + ",T," + compass() + ",M," + speed() + ",N,,M",
                (other, ours) -> {
                    sameAngle(other.getTrueWindDirection(), ours.value(Paths.TWD));
                    sameAngle(other.getMagneticWindDirection(), ours.value(Paths.TWD_MAGNETIC));
                    same(other.getWindSpeedKnots() * KNOT, ours.value(Paths.WIND_SPEED_OVER_GROUND));
                });
        compare(
                MTWSentence.class,
                () -> "IIMTW," + speed() + ",C",
                (other, ours) -> same(other.getTemperature() + 273.15, ours.value(Paths.WATER_TEMPERATURE)));
        compare(
                XDRSentence.class,
                () -> "IIXDR,A," + text("%.1f", 60 * random.nextDouble() - 30) + ",D,ROLL,A,"
                        + text("%.1f", 20 * random.nextDouble() - 10) + ",D,PITCH",
                (other, ours) -> {
                    for (Measurement measured : other.getMeasurements()) {
                        String path = measured.getName().equals("ROLL") ? Paths.ROLL : Paths.PITCH;
                        same(measured.getValue() * DEGREE, ours.value(path));
                    }
                });
    }

    private interface Bodies {
        String draw();
    }

    private <S> void compare(Class<S> kind, Bodies bodies, BiConsumer<S, NmeaText.Decoded> check) {
        Function<String, S> parser =
                line -> kind.cast(SentenceFactory.getInstance().createParser(line));
        for (int i = 0; i < EACH; i++) {
            String line = sentence(bodies.draw());
            try {
                check.accept(parser.apply(line), decoded(line));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError(line + ": " + e.getMessage(), e);
            }
        }
    }

    private static void comparePosition(PositionSentence other, NmeaText.Decoded ours) {
        same(other.getPosition().getLatitude() * DEGREE, ours.value(Paths.LATITUDE));
        same(other.getPosition().getLongitude() * DEGREE, ours.value(Paths.LONGITUDE));
    }

    private static void compareTime(TimeSentence other, NmeaText.Decoded ours) {
        assertEquals(
                (double) other.getTime().getMilliseconds(), ours.timeOfDayNanos / 1e6, 1e-3, "milliseconds of the day");
    }

    private static void same(double expected, double actual) {
        assertEquals(expected, actual, 1e-9 * Math.max(1, Math.abs(expected)));
    }

    /** A whole turn apart is the same. */
    private static void sameAngle(double expectedDeg, double actual) {
        assertEquals(0, Math.IEEEremainder(expectedDeg * DEGREE - actual, 2 * Math.PI), 1e-9);
    }

    private String position() {
        return text("%02d%07.4f,", random.nextInt(90), Math.min(59.9999, 60 * random.nextDouble()))
                + oneOf("N", "S")
                + text(",%03d%07.4f,", random.nextInt(180), Math.min(59.9999, 60 * random.nextDouble()))
                + oneOf("E", "W");
    }

    private String time() {
        return text(
                "%02d%02d%02d.%02d", random.nextInt(24), random.nextInt(60), random.nextInt(60), random.nextInt(100));
    }

    private String speed() {
        return text("%.1f", 50 * random.nextDouble());
    }

    private String compass() {
        return text("%.1f", Math.min(359.9, 360 * random.nextDouble()));
    }

    private String bow() {
        return text("%.1f", 180 * random.nextDouble());
    }

    private String variation() {
        return text("%.1f,", 20 * random.nextDouble()) + oneOf("E", "W");
    }

    private String oneOf(String... values) {
        return values[random.nextInt(values.length)];
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
