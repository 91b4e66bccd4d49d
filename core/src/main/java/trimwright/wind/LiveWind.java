package trimwright.wind;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.track.BoatTrack;
import trimwright.units.Angles;

/**
 * The wind of a boat as it comes, in one pass and bounded memory. Each second's mean is found by {@link SailedWind} on a
 * few seconds of the track, so the raw wind is that of the debrief, sensors as they read; then {@link LocalLevel} filters
 * with {@link WindNoise} of the last ten minutes. The debrief smooths from both sides and takes its noise from the whole
 * session: docs/theory/analysis.md, "Live", says how far the two differ.
 */
public final class LiveWind {
    /** Blocks of a second that noise and filter look back on (chosen: ten minutes). */
    private static final int BLOCKS = 600;

    /** Half of the span over which rates of turn are found must lie behind a block; and some of the turn after it (s, chosen). */
    public static final double DELAY = 2.0;

    /** Track before a block that its own derivation needs (s, chosen: a gap that is bridged, and the turn before it). */
    public static final double BEFORE = 4.0;

    /** Fewest seconds that tell how gusty it is (chosen: half of the ten minutes that turbulence is usually given for). */
    private static final int FEWEST = 300;

    private static final double BLOCK = 1.0;
    private static final long SECOND = 1_000_000_000L;

    private final @Nullable Boat boat;
    private final double[] north = new double[BLOCKS];
    private final double[] east = new double[BLOCKS];
    private int blocks;
    private double speed = Double.NaN;
    private double direction = Double.NaN;
    private double error = Double.NaN;
    private long blockNanos = Long.MIN_VALUE;

    /** @param boat where the sensor stands, or null where that is not known */
    public LiveWind(@Nullable Boat boat) {
        this.boat = boat;
    }

    /**
     * Takes the next second.
     *
     * @param window the track from {@link #BEFORE} before the block to {@link #DELAY} behind its end, as far as it is there
     * @param startNanos beginning of the block, a second behind that of the last one, or later after a gap
     * @return what was derived on the window
     */
    public WindTrack step(BoatTrack window, long startNanos) {
        long skipped = blockNanos == Long.MIN_VALUE ? 0 : (startNanos - blockNanos) / SECOND - 1;
        for (long i = 0; i < Math.min(BLOCKS, skipped); i++) {
            add(Double.NaN, Double.NaN);
        }
        blockNanos = startNanos;
        SessionClock clock = SessionClock.covering(
                window.startNanos(), Math.max(window.startNanos(), window.endNanos()), SailedWind.rateOf(window));
        WindTrack wind = SailedWind.of(window, clock, boat, WindOptions.DEFAULT);
        boolean[] leftOut = WindSmoothing.leftOut(clock, wind.toArray(Quantity.RATE_OF_TURN));
        double sumNorth = 0;
        double sumEast = 0;
        int count = 0;
        for (int i = 0; i < clock.size(); i++) {
            long after = clock.timeNanos(i) - startNanos;
            double tws = wind.get(Quantity.RAW_TWS, i);
            double twd = wind.get(Quantity.RAW_TWD, i);
            if (after >= 0 && after < SECOND && !leftOut[i] && !Double.isNaN(tws) && !Double.isNaN(twd)) {
                sumNorth += tws * StrictMath.cos(twd);
                sumEast += tws * StrictMath.sin(twd);
                count++;
            }
        }
        add(count == 0 ? Double.NaN : sumNorth / count, count == 0 ? Double.NaN : sumEast / count);
        filter();
        return wind;
    }

    private void add(double blockNorth, double blockEast) {
        if (blocks == BLOCKS) {
            System.arraycopy(north, 1, north, 0, BLOCKS - 1);
            System.arraycopy(east, 1, east, 0, BLOCKS - 1);
            blocks--;
        }
        north[blocks] = blockNorth;
        east[blocks] = blockEast;
        blocks++;
    }

    private void filter() {
        double[] n = java.util.Arrays.copyOf(north, blocks);
        double[] e = java.util.Arrays.copyOf(east, blocks);
        WindNoise noise = WindNoise.of(n, e, BLOCK);
        LocalLevel model = new LocalLevel(noise.scatter(), noise.walk() * BLOCK);
        LocalLevel.Estimate norths = model.filter(n);
        double levelNorth = norths.level()[blocks - 1];
        double levelEast = model.filter(e).level()[blocks - 1];
        error = Math.sqrt(norths.variance()[blocks - 1]);
        speed = StrictMath.hypot(levelNorth, levelEast);
        direction = Double.isNaN(speed) ? Double.NaN : Angles.compass(StrictMath.atan2(levelEast, levelNorth));
    }

    /** Filtered, at the height that the debrief gives it for (m/s); NaN before the first reading. */
    public double speed() {
        return speed;
    }

    /** Filtered, where the wind comes from (rad). */
    public double direction() {
        return direction;
    }

    /** Standard error of a component of the filtered wind (m/s); NaN before the first reading. */
    public double error() {
        return error;
    }

    /**
     * Standard deviation of the wind's speed over its mean, from seconds of the last ten minutes (-): what sensors scatter counts, so
     * that it is rather too large. NaN while fewer than {@link #FEWEST} are known.
     */
    public double turbulence() {
        return WindSpread.of(north, east, blocks, FEWEST);
    }

    /** Beginning of the last block, {@link Long#MIN_VALUE} before the first. */
    public long blockNanos() {
        return blockNanos;
    }
}
