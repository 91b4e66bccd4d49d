package trimwright.raceday;

import java.util.Locale;

/** Writes sentences of NMEA 0183. Numbers are rounded as whole numbers first, so that no field ever shows 60 or 360. */
final class NmeaSentence {
    private static final long MINUTE_PARTS = 100_000;
    private static final long DEGREE = 60 * MINUTE_PARTS;

    private NmeaSentence() {}

    /** Dollar sign, body, star, exclusive or of the body, line end. */
    static String of(String body) {
        int sum = 0;
        for (int i = 0; i < body.length(); i++) {
            sum ^= body.charAt(i);
        }
        return String.format(Locale.ROOT, "$%s*%02X\r\n", body, sum);
    }

    /** Degrees and minutes of a latitude (deg) with its letter: {@code 3112.00000,N}. */
    static String latitude(double degrees) {
        return place(degrees, 2, degrees < 0 ? 'S' : 'N');
    }

    /** Degrees and minutes of a longitude (deg) with its letter: {@code 04130.00000,W}. */
    static String longitude(double degrees) {
        return place(degrees, 3, degrees < 0 ? 'W' : 'E');
    }

    /** Time of day with hundredths, {@code 235959.99}, of nanoseconds since 1970 cut to a hundredth. */
    static String time(long nanos) {
        long hundredths = Math.floorMod(Math.floorDiv(nanos, 10_000_000L), 8_640_000L);
        return String.format(
                Locale.ROOT,
                "%02d%02d%02d.%02d",
                hundredths / 360_000,
                hundredths / 6_000 % 60,
                hundredths / 100 % 60,
                hundredths % 100);
    }

    /** A direction (rad) in [0, 360) with one decimal. */
    static String direction(double radians) {
        long tenths = Math.floorMod(Math.round(Math.toDegrees(radians) * 10), 3600);
        return tenths / 10 + "." + tenths % 10;
    }

    private static String place(double degrees, int digits, char letter) {
        long parts = Math.round(Math.abs(degrees) * DEGREE);
        long inMinutes = parts % DEGREE;
        return String.format(
                Locale.ROOT,
                "%0" + digits + "d%02d.%05d,%c",
                parts / DEGREE,
                inMinutes / MINUTE_PARTS,
                inMinutes % MINUTE_PARTS,
                letter);
    }
}
