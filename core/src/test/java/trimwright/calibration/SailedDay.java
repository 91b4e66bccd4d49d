package trimwright.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/**
 * A day that test code alone makes: beats and runs in a wind that walks and gusts, then spoiled by known faults. Degrees and
 * metres a second.
 */
final class SailedDay {
    static final int RATE = 1;

    /** Where the boat points. */
    enum Plan {
        BEATS_AND_RUNS,
        BEATS_ONLY,
        ONE_TACK
    }

    /** What is planted. */
    record Fault(
            double angle,
            double upwash,
            double speed,
            double compass,
            double log,
            double leeway,
            double camber,
            double sheet,
            double twist) {}

    private final Random random;
    private final double seconds;
    private final Plan plan;

    SailedDay(long seed, double seconds, Plan plan) {
        random = new Random(seed);
        this.seconds = seconds;
        this.plan = plan;
    }

    Random random() {
        return random;
    }

    private double heading(double time) {
        double side = plan == Plan.ONE_TACK || time % 160 < 80 ? 1 : -1;
        return side * (isBeating(time) ? 45 : 140);
    }

    private boolean isBeating(double time) {
        return plan != Plan.BEATS_AND_RUNS || time % 960 < 480;
    }

    private double speed(double time) {
        return isBeating(time) ? 9 : 14;
    }

    /** Of the wind on the water's, of a mean wind of 8 m/s: leeway is given for 1. */
    private double pressure(double time) {
        double v = speed(time);
        double felt = 64 + v * v + 16 * v * Math.cos(Math.toRadians(heading(time)));
        return felt / (v * v);
    }

    /** First-order noise: spread, and the time over which it is forgotten (s); straight between seconds. */
    private DoubleUnaryOperator wander(double spread, double memory) {
        double[] values = new double[(int) seconds + 3];
        double keep = Math.exp(-1 / memory);
        values[0] = spread * random.nextGaussian();
        for (int i = 1; i < values.length; i++) {
            values[i] = keep * values[i - 1] + spread * Math.sqrt(1 - keep * keep) * random.nextGaussian();
        }
        return t -> {
            int i = (int) t;
            return values[i] + (t - i) * (values[i + 1] - values[i]);
        };
    }

    /** The boat's track as its instruments have it; the wind it was sailed in swings and gusts. */
    BoatTrack track(Fault fault) {
        DoubleUnaryOperator swing = wander(4, 300);
        DoubleUnaryOperator puff = wander(0.5, 200);
        DoubleUnaryOperator gust = wander(0.5, 6);
        DoubleUnaryOperator shift = wander(3, 6);
        DoubleUnaryOperator[] trim = {wander(0.4, 30), wander(0.5, 30), wander(0.8, 30)};
        DoubleUnaryOperator steered = wander(0.6, 30);
        DoubleUnaryOperator wheel = wander(0.1, 30);
        double current = 0.2 * random.nextGaussian();
        DoubleUnaryOperator drift = t -> {
            double side = Math.signum(-heading(t));
            return -side * fault.leeway * pressure(t)
                    + Math.toDegrees(current / speed(t)) * Math.sin(Math.toRadians(heading(t)))
                    + steered.applyAsDouble(t);
        };
        BoatTrack clean = new SyntheticTrack(seconds, RATE)
                .heading(this::heading)
                .speed(this::speed)
                .drift(drift)
                .wind(
                        t -> 8 + puff.applyAsDouble(t) + gust.applyAsDouble(t),
                        t -> swing.applyAsDouble(t) + shift.applyAsDouble(t))
                .with(
                        Paths.STW,
                        t -> (speed(t) + current * Math.cos(Math.toRadians(heading(t)))) * (1 + fault.log)
                                + wheel.applyAsDouble(t))
                .with(Paths.CAMBER, t -> signed(t, 22, trim[0], fault.camber))
                .with(Paths.TWIST, t -> signed(t, 8, trim[2], fault.twist))
                .with(Paths.SHEET, t -> Math.toRadians(trim[1].applyAsDouble(t)))
                .build();
        return spoiled(clean, fault);
    }

    private double signed(double time, double degrees, DoubleUnaryOperator noise, double zero) {
        return Math.toRadians(Math.signum(-heading(time)) * degrees + noise.applyAsDouble(time) + zero);
    }

    private BoatTrack spoiled(BoatTrack track, Fault fault) {
        ChannelGroup group = track.groups().get(0);
        double[] angle = values(group, Paths.AWA);
        double[] speed = values(group, Paths.AWS);
        double[] heading = values(group, Paths.HEADING);
        double[] sheet = values(group, Paths.SHEET);
        for (int i = 0; i < angle.length; i++) {
            // Trimmed 9 degrees to the wind; then what the gauges add.
            sheet[i] += angle[i] - Math.signum(angle[i]) * Math.toRadians(9) + Math.toRadians(fault.sheet);
            double upwash = fault.upwash * Math.pow(15 / speed[i], 1.5) * Math.signum(angle[i]);
            angle[i] += Math.toRadians(upwash + fault.angle + 0.6 * random.nextGaussian());
            speed[i] *= 1 + fault.speed;
            heading[i] += Math.toRadians(fault.compass + 0.25 * random.nextGaussian());
        }
        List<Channel> channels = new ArrayList<>();
        for (Channel channel : group.channels()) {
            double[] spoiled = switch (channel.path()) {
                case Paths.AWA -> angle;
                case Paths.AWS -> speed;
                case Paths.HEADING -> heading;
                case Paths.SHEET -> sheet;
                default -> channel.toArray();
            };
            channels.add(Channel.of(channel.path(), spoiled));
        }
        return new BoatTrack(track.boat(), List.of(new ChannelGroup("all", group.timesToArray(), channels)));
    }

    private static double[] values(ChannelGroup group, String path) {
        Channel channel = group.find(path);
        if (channel == null) {
            throw new IllegalStateException(path);
        }
        return channel.toArray();
    }

    static WindTrack wind(BoatTrack track) {
        SessionClock clock = SessionClock.covering(track.startNanos(), track.endNanos(), RATE);
        return SailedWind.of(track, clock, null, new WindOptions(2.5, null, WindOptions.Sensors.AS_LOGGED));
    }
}
