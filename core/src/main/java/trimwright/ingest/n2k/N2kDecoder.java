package trimwright.ingest.n2k;

import java.util.Arrays;
import trimwright.ingest.Days;
import trimwright.ingest.TimeText;
import trimwright.units.Angles;

/** From a whole message to values, SI. Fields that are absent, an error or beyond the message's end are NaN. */
final class N2kDecoder {
    /** The one message read here that takes several frames. */
    static final int GNSS_FIX = 129029;

    private static final double ANGLE = 1e-4;
    private static final double SPEED = 0.01;
    private static final double TURN = 1.0 / 32 * 1e-6;
    private static final double DEGREE_7 = Math.toRadians(1e-7);
    private static final double DEGREE_16 = Math.toRadians(1e-16);
    private static final double TICKS_PER_SECOND = 1e4;

    private final double[] values = new double[N2kLayout.MOST_VALUES];
    private N2kLayout layout = N2kLayout.TIME;
    private long clock = TimeText.NONE;

    N2kLayout layout() {
        return layout;
    }

    /** Value i of the layout's paths, SI; NaN if absent. */
    double value(int i) {
        return values[i];
    }

    boolean hasValue() {
        return Arrays.stream(values).anyMatch(value -> !Double.isNaN(value));
    }

    /** UTC that the message states (ns since 1970), or {@link TimeText#NONE}. */
    long clock() {
        return clock;
    }

    /** Whether the message is one that is read here. */
    boolean decode(Frame f) {
        Arrays.fill(values, Double.NaN);
        clock = TimeText.NONE;
        switch (f.pgn) {
            case 126992 -> set(N2kLayout.TIME, clockOf(f, 2));
            case 127245 -> put(N2kLayout.RUDDER, ANGLE * f.signed(4, 2));
            case 127250 -> decodeHeading(f);
            case 127251 -> put(N2kLayout.TURN, TURN * f.signed(1, 4));
            case 127257 -> put(N2kLayout.ATTITUDE, ANGLE * f.signed(5, 2), ANGLE * f.signed(3, 2));
            case 127258 -> put(N2kLayout.VARIATION, ANGLE * f.signed(4, 2));
            case 128000 -> put(N2kLayout.LEEWAY, ANGLE * f.signed(1, 2));
            case 128259 -> put(N2kLayout.SPEED, SPEED * f.unsigned(1, 2), SPEED * f.unsigned(3, 2));
            case 129025 -> put(N2kLayout.POSITION, DEGREE_7 * f.signed(0, 4), DEGREE_7 * f.signed(4, 4));
            case 129026 -> decodeCourse(f);
            case GNSS_FIX -> {
                put(N2kLayout.FIX, DEGREE_16 * f.signed(7, 8), DEGREE_16 * f.signed(15, 8));
                clock = clockOf(f, 1);
            }
            case 130306 -> decodeWind(f);
            default -> {
                return false;
            }
        }
        return true;
    }

    private void decodeHeading(Frame f) {
        double heading = ANGLE * f.unsigned(1, 2);
        double deviation = ANGLE * f.signed(3, 2);
        double variation = ANGLE * f.signed(5, 2);
        switch (f.bits(7, 2)) {
            case 0 -> put(N2kLayout.HEADING_TRUE, compass(heading), variation);
            case 1 -> {
                double magnetic = Double.isNaN(deviation) ? heading : heading + deviation;
                put(N2kLayout.HEADING_MAGNETIC, compass(magnetic), deviation, variation);
            }
            default -> put(N2kLayout.VARIATION, variation);
        }
    }

    private void decodeCourse(Frame f) {
        double course = compass(ANGLE * f.unsigned(2, 2));
        double speed = SPEED * f.unsigned(4, 2);
        switch (f.bits(1, 2)) {
            case 0 -> put(N2kLayout.COURSE_TRUE, speed, course);
            case 1 -> put(N2kLayout.COURSE_MAGNETIC, speed, course);
            default -> put(N2kLayout.COURSE_TRUE, speed, Double.NaN);
        }
    }

    private void decodeWind(Frame f) {
        double speed = SPEED * f.unsigned(1, 2);
        double angle = ANGLE * f.unsigned(3, 2);
        switch (f.bits(5, 3)) {
            case 0 -> put(N2kLayout.WIND_NORTH, compass(angle), speed);
            case 1 -> put(N2kLayout.WIND_MAGNETIC, compass(angle), speed);
            case 2 -> put(N2kLayout.WIND_APPARENT, signed(angle), speed);
            case 3 -> put(N2kLayout.WIND_BOAT, signed(angle), speed);
            case 4 -> put(N2kLayout.WIND_WATER, signed(angle), speed);
            default -> layout = N2kLayout.WIND_APPARENT;
        }
    }

    /** Days since 1970 and ten thousandths of a second of the day, the last second of a leap day held at its end. */
    private static long clockOf(Frame f, int at) {
        double day = f.unsigned(at, 2);
        double ticks = f.unsigned(at + 2, 4);
        if (Double.isNaN(day) || Double.isNaN(ticks) || ticks > 86_401 * TICKS_PER_SECOND) {
            return TimeText.NONE;
        }
        long nanos = Math.min(((long) ticks) * 100_000, Days.NANOS_PER_DAY - 1_000_000);
        return ((long) day) * Days.NANOS_PER_DAY + nanos;
    }

    private void set(N2kLayout newLayout, long newClock) {
        layout = newLayout;
        clock = newClock;
    }

    private void put(N2kLayout newLayout, double... found) {
        layout = newLayout;
        System.arraycopy(found, 0, values, 0, found.length);
    }

    private static double compass(double angle) {
        return Double.isNaN(angle) ? angle : Angles.compass(angle);
    }

    private static double signed(double angle) {
        return Double.isNaN(angle) ? angle : Angles.signed(angle);
    }
}
