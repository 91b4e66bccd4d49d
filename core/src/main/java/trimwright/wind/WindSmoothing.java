package trimwright.wind;

import java.util.Arrays;
import trimwright.units.Angles;
import trimwright.units.Units;

/**
 * Smooths the wind as a vector: means over blocks, then {@link LocalLevel} on each component with {@link WindNoise} from
 * the data, then back to the clock. Rotating all readings rotates the result. Readings taken in a fast turn are left out
 * of it: sensor lag and the wing's swing make them false.
 */
final class WindSmoothing {
    /** Shortest block (s), chosen: far below the time in which a boat answers to wind. */
    private static final double SHORTEST_BLOCK = 1.0;

    /** Rate of turn above which a reading is left out, and the time around it (chosen). */
    private static final double FAST_TURN = Units.fromDegrees(5);

    private static final double AROUND_TURN = 2.0;

    private final SessionClock clock;
    private final int block;
    private final double[] north;
    private final double[] east;

    /** Smoothed wind on the clock; the noise that was found. */
    record Smoothed(double[] speed, double[] direction, WindNoise noise) {}

    /**
     * @param rateOfTurn (rad/s), may be NaN
     * @param sensorInterval time between wind readings (s)
     */
    static Smoothed of(
            SessionClock clock, double[] speed, double[] direction, double[] rateOfTurn, double sensorInterval) {
        double blockSeconds = Math.max(SHORTEST_BLOCK, Math.ceil(sensorInterval));
        WindSmoothing blocks = new WindSmoothing(clock, clock.steps(blockSeconds));
        blocks.fill(speed, direction, leftOut(clock, rateOfTurn));
        return blocks.smooth(speed);
    }

    private WindSmoothing(SessionClock clock, int block) {
        this.clock = clock;
        this.block = block;
        int n = (clock.size() + block - 1) / block;
        this.north = new double[n];
        this.east = new double[n];
    }

    static boolean[] leftOut(SessionClock clock, double[] rateOfTurn) {
        boolean[] out = new boolean[rateOfTurn.length];
        int around = clock.steps(AROUND_TURN);
        for (int i = 0; i < out.length; i++) {
            if (Math.abs(rateOfTurn[i]) > FAST_TURN) {
                Arrays.fill(out, Math.max(0, i - around), Math.min(out.length, i + around + 1), true);
            }
        }
        return out;
    }

    private void fill(double[] speed, double[] direction, boolean[] leftOut) {
        for (int b = 0; b < north.length; b++) {
            double sumNorth = 0;
            double sumEast = 0;
            int count = 0;
            for (int i = b * block; i < Math.min(speed.length, (b + 1) * block); i++) {
                if (!leftOut[i] && !Double.isNaN(speed[i]) && !Double.isNaN(direction[i])) {
                    sumNorth += speed[i] * StrictMath.cos(direction[i]);
                    sumEast += speed[i] * StrictMath.sin(direction[i]);
                    count++;
                }
            }
            north[b] = count == 0 ? Double.NaN : sumNorth / count;
            east[b] = count == 0 ? Double.NaN : sumEast / count;
        }
    }

    private Smoothed smooth(double[] rawSpeed) {
        double blockSeconds = block * clock.step();
        WindNoise noise = WindNoise.of(north, east, blockSeconds);
        LocalLevel model = new LocalLevel(noise.scatter(), noise.walk() * blockSeconds);
        double[] smoothNorth = model.smooth(north).level();
        double[] smoothEast = model.smooth(east).level();
        double[] speed = new double[clock.size()];
        double[] direction = new double[clock.size()];
        for (int i = 0; i < speed.length; i++) {
            double n = at(smoothNorth, i);
            double e = at(smoothEast, i);
            // Nothing is invented: where the readings have a gap so has the smoothed wind.
            boolean gap = Double.isNaN(rawSpeed[i]) || Double.isNaN(n);
            speed[i] = gap ? Double.NaN : StrictMath.hypot(n, e);
            direction[i] = gap ? Double.NaN : Angles.compass(StrictMath.atan2(e, n));
        }
        return new Smoothed(speed, direction, noise);
    }

    /** Between the middles of two blocks, level beyond the first and last. */
    private double at(double[] blocks, int i) {
        double place = (i - (block - 1) / 2.0) / block;
        int before = Math.max(0, Math.min(blocks.length - 1, (int) Math.floor(place)));
        int after = Math.min(blocks.length - 1, before + 1);
        double share = Math.max(0, Math.min(1, place - before));
        return blocks[before] + share * (blocks[after] - blocks[before]);
    }
}
