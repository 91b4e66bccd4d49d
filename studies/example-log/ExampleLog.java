import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Makes the example log: twelve invented minutes of the boat Dunlin in Saltmere Bay, which lies in open ocean. A smooth
 * story of courses and speeds, nothing computed by the model: no figure in it is a target or says anything of a real
 * boat. Same program, same bytes.
 *
 * <pre>java studies/example-log/ExampleLog.java examples/saltmere</pre>
 */
public final class ExampleLog {
    private static final double KNOT = 1852.0 / 3600.0;
    private static final int SECONDS = 720;
    private static final int RATE = 4;
    private static final int INNER = 20;
    private static final Instant START = Instant.parse("2027-03-06T12:00:00Z");
    private static final double LATITUDE = -40.5;
    private static final double LONGITUDE = -110.0;

    /** Where the boat file of the class has its wind sensor: above the hulls' bottom, and turning with the wing. */
    private static final double SENSOR_HEIGHT = 28.3;

    private static final double SENSOR_X = 0.2;

    /** Water moves at 0.3 m/s towards 100 deg. */
    private static final double SET = rad(100);

    private static final double DRIFT = 0.3;

    /** What the driver is told: from then on steer to that wind angle (deg, positive on starboard tack) at that rate. */
    private record Order(double at, double angle, double rate, String kind, boolean touchesDown) {}

    private static final List<Order> ORDERS = List.of(
            new Order(0, 48, 10, "start", false),
            new Order(110, -48, 13, "tack", false),
            new Order(200, 48, 11, "tack", true),
            new Order(290, -48, 13, "tack", false),
            new Order(390, -140, 9, "bear_away", false),
            new Order(490, 140, 12, "gybe", false),
            new Order(590, -140, 11, "gybe", true),
            new Order(680, -48, 9, "round_up", false));

    private final Random random = new Random(20270306);
    private final StringBuilder nmea = new StringBuilder();
    private final StringBuilder wing = new StringBuilder();
    private final StringBuilder story = new StringBuilder("start_s,end_s,what\n");

    private double heading = rad(245 - 48);
    private double speed = 18 * KNOT;
    private double rideHeight = 0.2;
    private double north;
    private double east;
    private double roll = rad(1);
    private double rollBefore = roll;
    private double pitch = rad(0.5);
    private double camber = rad(16);
    private double sheet = rad(7);
    private double eddyAlong;
    private double eddyAcross;
    private double rollNoise;
    private int order;
    private double turnedAt = -1;
    private double downUntil = -1;

    public static void main(String[] args) throws IOException {
        if (args.length != 1) {
            System.err.println("usage: java ExampleLog.java FOLDER");
            System.exit(2);
        }
        new ExampleLog().run(Path.of(args[0]));
    }

    private void run(Path folder) throws IOException {
        wing.append("time_utc,camber_deg,twist_deg,sheet_deg,sheet_load_n,ride_height_m\n");
        double dt = 1.0 / (RATE * INNER);
        for (int i = 0; i < SECONDS * RATE; i++) {
            double t = (double) i / RATE;
            sentences(t, i);
            for (int k = 0; k < INNER; k++) {
                step(t + k * dt, dt);
            }
        }
        Files.createDirectories(folder);
        write(folder, "dunlin.nmea", nmea);
        write(folder, "dunlin-wing.csv", wing);
        write(folder, "story.csv", story);
    }

    private static void write(Path folder, String name, StringBuilder text) throws IOException {
        Files.writeString(folder.resolve(name), text, StandardCharsets.US_ASCII);
    }

    // The story

    private static double windSpeed(double t) {
        double puff = 4 * bump(t, 150, 12) + 2 * bump(t, 440, 15) - 2.5 * bump(t, 560, 18);
        return (14 + 0.8 * StrictMath.sin(t / 43) + puff) * KNOT;
    }

    private static double windFrom(double t) {
        return rad(245 + 6 * StrictMath.sin(2 * Math.PI * t / 310) + 3 * bump(t, 150, 15));
    }

    /** A smooth hump of height one around a time, about as wide as that to either side. */
    private static double bump(double t, double at, double width) {
        return StrictMath.exp(-(t - at) * (t - at) / (width * width));
    }

    /** Speed that the boat tends to at a wind angle (deg, no sign), by smooth interpolation between invented knots. */
    private static double wantedSpeed(double angle) {
        double[] angles = {0, 25, 48, 70, 100, 140, 165, 180};
        double[] knots = {9, 15, 26, 31, 36, 33, 25, 21};
        int i = 0;
        while (i < angles.length - 2 && angle > angles[i + 1]) {
            i++;
        }
        double s = Math.min(1, (angle - angles[i]) / (angles[i + 1] - angles[i]));
        double eased = s * s * (3 - 2 * s);
        return (knots[i] + eased * (knots[i + 1] - knots[i])) * KNOT;
    }

    private void step(double t, double dt) {
        if (order + 1 < ORDERS.size() && t >= ORDERS.get(order + 1).at()) {
            order++;
            turnedAt = t;
        }
        Order now = ORDERS.get(order);
        steer(t, now, dt);
        double angle = signed(windFrom(t) - heading);
        double tws = windSpeed(t);
        boolean down = t < downUntil;
        double wanted = down ? 11 * KNOT : wantedSpeed(Math.abs(deg(angle))) * (1 + 0.025 * (tws / KNOT - 14));
        speed += (wanted - speed) * dt / (down ? 3 : speed < wanted ? 7 : 5);
        double height = down ? 0 : 1.0 + 0.08 * StrictMath.sin(t * 1.3);
        rideHeight += (height - rideHeight) * dt / 1.2;
        int tack = angle >= 0 ? 1 : -1;
        double ease = bump(t, 150, 8);
        boolean low = Math.abs(angle) > rad(90);
        camber += (tack * rad((low ? 24 : 16) - 3 * ease) - camber) * dt / 0.7;
        sheet += (tack * rad((low ? 13 : 7) + 3 * ease) - sheet) * dt / 0.9;
        rollNoise += (-rollNoise / 1.5) * dt + rad(0.5) * Math.sqrt(dt) * random.nextGaussian();
        rollBefore = roll;
        roll += (tack * rad(down ? -3 : 2) + rollNoise - roll) * dt / 0.8;
        pitch = rad(0.6 + 0.3 * StrictMath.sin(t * 0.9));
        eddyAlong += -eddyAlong / 4 * dt + 0.30 * Math.sqrt(dt) * random.nextGaussian();
        eddyAcross += -eddyAcross / 4 * dt + 0.25 * Math.sqrt(dt) * random.nextGaussian();
        north += ground()[0] * dt;
        east += ground()[1] * dt;
    }

    /** Towards the ordered wind angle; a tack goes through the wind, a gybe away from it. */
    private void steer(double t, Order now, double dt) {
        double goal = windFrom(t) - rad(now.angle());
        double way = signed(goal - heading);
        boolean turning = turnedAt >= 0;
        if (turning && Math.abs(way) < rad(1.5)) {
            story.append(String.format(Locale.ROOT, "%.2f,%.2f,%s\n", now.at(), t, now.kind()));
            turnedAt = -1;
            turning = false;
            if (now.touchesDown()) {
                downUntil = t + 9;
                story.append(String.format(Locale.ROOT, "%.2f,%.2f,%s\n", t, downUntil, "touch_down"));
            }
        }
        double slowing = Math.min(1, Math.abs(way) / rad(12));
        double starting = turning ? Math.min(1, 0.2 + (t - turnedAt) / 1.5) : 1;
        double rate = turning
                ? Math.signum(way) * rad(now.rate()) * Math.max(0.15, slowing) * starting
                : way / 4 + rad(0.6) * StrictMath.sin(t * 0.8);
        heading += rate * dt;
    }

    /** Velocity over ground, north and east: through the water along heading less leeway, plus the moving water. */
    private double[] ground() {
        double course = heading - leeway();
        return new double[] {
            speed * StrictMath.cos(course) + DRIFT * StrictMath.cos(SET),
            speed * StrictMath.sin(course) + DRIFT * StrictMath.sin(SET)
        };
    }

    /** Signed as the tack: positive with wind from starboard, when the boat slides to port. */
    private double leeway() {
        double smooth = camber / rad(16);
        return rad(2.5) * Math.max(-1, Math.min(1, smooth));
    }

    // The instruments

    private void sentences(double t, int i) {
        if (i % RATE == 0) {
            rmc(t);
            if (i % (2 * RATE) == 0) {
                // The log wheel is out of the water unless the boat is down.
                double log = rideHeight > 0.3 ? 0 : speed * StrictMath.cos(leeway());
                put(String.format(Locale.ROOT, "VWVHW,,T,,M,%.1f,N,,K", log / KNOT));
            }
        }
        double compass = deg(heading) + 0.3 * random.nextGaussian();
        put(String.format(Locale.ROOT, "HEHDT,%.1f,T", wrap(compass)));
        wind(t);
        put(String.format(
                Locale.ROOT,
                "IIXDR,A,%.1f,D,ROLL,A,%.1f,D,PITCH",
                deg(roll) + 0.1 * random.nextGaussian(),
                deg(pitch) + 0.1 * random.nextGaussian()));
        if (i % 2 == 0) {
            wingRow(t);
        }
    }

    private void rmc(double t) {
        double[] velocity = ground();
        double sog = Math.hypot(velocity[0], velocity[1]) / KNOT + 0.05 * random.nextGaussian();
        double cog = deg(StrictMath.atan2(velocity[1], velocity[0])) + 0.2 * random.nextGaussian();
        double metresPerDegree = 60 * 1852.0;
        double latitude = LATITUDE + north / metresPerDegree;
        double longitude = LONGITUDE + east / (metresPerDegree * StrictMath.cos(rad(LATITUDE)));
        Instant time = START.plusMillis(Math.round(t * 1000));
        String clock = DateTimeFormatter.ofPattern("HHmmss'.00'", Locale.ROOT).withZone(ZoneOffset.UTC).format(time);
        String date = DateTimeFormatter.ofPattern("ddMMyy", Locale.ROOT).withZone(ZoneOffset.UTC).format(time);
        put(String.format(
                Locale.ROOT,
                "GPRMC,%s,A,%s,%s,%.1f,%.1f,%s,,,A",
                clock,
                degreesMinutes(latitude, 2, "N", "S"),
                degreesMinutes(longitude, 3, "E", "W"),
                sog,
                wrap(cog),
                date));
    }

    /** Whole ten-thousandths of a minute first, so that no sixtieth minute is ever written. */
    private static String degreesMinutes(double degrees, int digits, String plus, String minus) {
        long units = Math.round(Math.abs(degrees) * 60 * 10_000);
        long whole = units / 600_000;
        double minutes = (units % 600_000) / 10_000.0;
        return String.format(Locale.ROOT, "%0" + digits + "d%07.4f,%s", whole, minutes, degrees < 0 ? minus : plus);
    }

    /** Apparent wind as the sensor at the head of the wing feels it: tilted, swung by the roll, seen from the chord. */
    private void wind(double t) {
        double aloft = StrictMath.pow((SENSOR_HEIGHT + rideHeight) / 10, 0.087);
        double from = windFrom(t);
        double tws = windSpeed(t) * aloft + eddyAlong;
        double[] velocity = ground();
        double northFelt = tws * StrictMath.cos(from) - eddyAcross * StrictMath.sin(from) + velocity[0];
        double eastFelt = tws * StrictMath.sin(from) + eddyAcross * StrictMath.cos(from) + velocity[1];
        double ahead = northFelt * StrictMath.cos(heading) + eastFelt * StrictMath.sin(heading);
        double across = -northFelt * StrictMath.sin(heading) + eastFelt * StrictMath.cos(heading);
        double rollRate = (roll - rollBefore) * RATE * INNER;
        double x = ahead * StrictMath.cos(pitch);
        double y = across * StrictMath.cos(roll)
                + ahead * StrictMath.sin(pitch) * StrictMath.sin(roll)
                + rollRate * SENSOR_HEIGHT;
        double angle = deg(StrictMath.atan2(y, x) - sheet) + 0.5 * random.nextGaussian();
        double felt = Math.hypot(x, y) / KNOT + 0.25 * random.nextGaussian();
        boolean dropout = t >= 455 && t < 463;
        if (!dropout) {
            put(String.format(Locale.ROOT, "WIMWV,%.1f,R,%.1f,N,A", wrap(angle), Math.max(0, felt)));
        }
    }

    private void wingRow(double t) {
        int tack = sheet >= 0 ? 1 : -1;
        double apparent = Math.hypot(speed, windSpeed(t));
        double load = 12 * apparent * apparent * Math.min(1, Math.abs(camber) / rad(16));
        double twist = tack * (Math.abs(signed(windFrom(t) - heading)) > rad(90) ? 14 : 9 + 2 * bump(t, 150, 8));
        wing.append(String.format(
                Locale.ROOT,
                "%s,%.2f,%.2f,%.2f,%.0f,%.2f\n",
                DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
                        .withZone(ZoneOffset.UTC)
                        .format(START.plusMillis(Math.round(t * 1000))),
                deg(camber) + 0.1 * random.nextGaussian(),
                twist + 0.1 * random.nextGaussian(),
                deg(sheet) + 0.1 * random.nextGaussian(),
                Math.max(0, load * (1 + 0.03 * random.nextGaussian())),
                rideHeight + 0.02 * random.nextGaussian()));
    }

    private void put(String body) {
        int sum = 0;
        for (int i = 0; i < body.length(); i++) {
            sum ^= body.charAt(i);
        }
        nmea.append('$').append(body).append(String.format(Locale.ROOT, "*%02X\r\n", sum));
    }

    private static double wrap(double degrees) {
        double tenths = Math.round(degrees * 10) % 3600;
        return (tenths < 0 ? tenths + 3600 : tenths) / 10;
    }

    private static double signed(double angle) {
        return Math.IEEEremainder(angle, 2 * Math.PI);
    }

    private static double rad(double degrees) {
        return degrees * Math.PI / 180;
    }

    private static double deg(double radians) {
        return radians * 180 / Math.PI;
    }
}
