package trimwright.wind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/**
 * A boat's track with known truth, made by test code alone: apparent wind comes from the full rotation matrices of heel
 * and pitch, which the main code never forms. Angles in degrees, speeds in m/s, functions of time in seconds.
 */
public final class SyntheticTrack {
    public static final long START = 1_800_000_000_000_000_000L;

    private final double step;
    private final int size;
    private DoubleUnaryOperator heading = t -> 0;
    private DoubleUnaryOperator speed = t -> 10;
    private DoubleUnaryOperator drift = t -> 0;
    private DoubleUnaryOperator tws = t -> 8;
    private DoubleUnaryOperator twd = t -> 0;
    private DoubleUnaryOperator roll = t -> 0;
    private DoubleUnaryOperator pitch = t -> 0;
    private final Map<String, DoubleUnaryOperator> extra = new LinkedHashMap<>();

    public SyntheticTrack(double seconds, double rate) {
        this.step = 1 / rate;
        this.size = (int) Math.round(seconds * rate) + 1;
    }

    public SyntheticTrack heading(DoubleUnaryOperator degrees) {
        heading = degrees;
        return this;
    }

    public SyntheticTrack speed(DoubleUnaryOperator metresPerSecond) {
        speed = metresPerSecond;
        return this;
    }

    /** Course over ground less heading. */
    public SyntheticTrack drift(DoubleUnaryOperator degrees) {
        drift = degrees;
        return this;
    }

    public SyntheticTrack wind(DoubleUnaryOperator metresPerSecond, DoubleUnaryOperator degrees) {
        tws = metresPerSecond;
        twd = degrees;
        return this;
    }

    public SyntheticTrack attitude(DoubleUnaryOperator rollDegrees, DoubleUnaryOperator pitchDegrees) {
        roll = rollDegrees;
        pitch = pitchDegrees;
        return this;
    }

    /** A further channel, SI. */
    public SyntheticTrack with(String path, DoubleUnaryOperator si) {
        extra.put(path, si);
        return this;
    }

    public BoatTrack build() {
        long[] times = new long[size];
        Map<String, double[]> columns = new LinkedHashMap<>();
        for (String path :
                List.of(Paths.HEADING, Paths.SOG, Paths.COG, Paths.AWA, Paths.AWS, Paths.ROLL, Paths.PITCH)) {
            columns.put(path, new double[size]);
        }
        extra.keySet().forEach(path -> columns.put(path, new double[size]));
        for (int i = 0; i < size; i++) {
            double t = i * step;
            times[i] = START + Math.round(t * 1e9);
            double[] felt = felt(t);
            set(columns, Paths.HEADING, i, compass(heading.applyAsDouble(t)));
            set(columns, Paths.SOG, i, speed.applyAsDouble(t));
            set(columns, Paths.COG, i, compass(heading.applyAsDouble(t) + drift.applyAsDouble(t)));
            set(columns, Paths.AWA, i, Math.atan2(felt[1], felt[0]));
            set(columns, Paths.AWS, i, Math.hypot(felt[0], felt[1]));
            set(columns, Paths.ROLL, i, Math.toRadians(roll.applyAsDouble(t)));
            set(columns, Paths.PITCH, i, Math.toRadians(pitch.applyAsDouble(t)));
            for (var entry : extra.entrySet()) {
                set(columns, entry.getKey(), i, entry.getValue().applyAsDouble(t));
            }
        }
        List<Channel> channels = new ArrayList<>();
        columns.forEach((path, values) -> channels.add(Channel.of(path, values)));
        return new BoatTrack("Dunlin", List.of(new ChannelGroup("all", times, channels)));
    }

    /** Where the wind comes from, in boat axes: transpose of Rz(heading) Ry(pitch) Rx(roll) on the earth vector. */
    private double[] felt(double t) {
        double d = Math.toRadians(twd.applyAsDouble(t));
        double c = Math.toRadians(heading.applyAsDouble(t) + drift.applyAsDouble(t));
        double v = speed.applyAsDouble(t);
        double w = tws.applyAsDouble(t);
        double[] earth = {w * Math.cos(d) + v * Math.cos(c), w * Math.sin(d) + v * Math.sin(c), 0};
        double[] level = aboutZ(earth, -Math.toRadians(heading.applyAsDouble(t)));
        double[] pitched = aboutY(level, -Math.toRadians(pitch.applyAsDouble(t)));
        return aboutX(pitched, -Math.toRadians(roll.applyAsDouble(t)));
    }

    private static double[] aboutX(double[] v, double a) {
        return new double[] {v[0], v[1] * Math.cos(a) - v[2] * Math.sin(a), v[1] * Math.sin(a) + v[2] * Math.cos(a)};
    }

    private static double[] aboutY(double[] v, double a) {
        return new double[] {v[0] * Math.cos(a) + v[2] * Math.sin(a), v[1], -v[0] * Math.sin(a) + v[2] * Math.cos(a)};
    }

    private static double[] aboutZ(double[] v, double a) {
        return new double[] {v[0] * Math.cos(a) - v[1] * Math.sin(a), v[0] * Math.sin(a) + v[1] * Math.cos(a), v[2]};
    }

    private static void set(Map<String, double[]> columns, String path, int i, double value) {
        double[] column = columns.get(path);
        if (column == null) {
            throw new IllegalStateException(path);
        }
        column[i] = value;
    }

    private static double compass(double degrees) {
        double wrapped = degrees - 360 * Math.floor(degrees / 360);
        return Math.toRadians(wrapped);
    }
}
