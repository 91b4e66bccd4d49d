package trimwright.learned;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.linear.RealMatrix;
import trimwright.units.Median;

/**
 * Learns a boat's best speed from steady sailing: a stochastic frontier whose course over wind and angle is {@link Smooth}. A
 * block reads {@code ln ratio = frontier + session - loss + noise}. Noise is what readings scatter within a session, loss what
 * the boat lies below her best; both scales come from the data, all that explain it being weighed. What the readings of a whole
 * session may be off is known beforehand and enters as {@link SensorDoubt}. Left out: what is off in every session
 * alike, which is learnt as if the boat did it.
 */
public final class SeasonFit {
    /** What boat speed may be off in a session by current, sea and load (-): chosen. */
    private static final double SESSION_OFF = 0.005;

    private static final int EFFECTS = 4;

    /** Scales that are weighed (-): chosen, from less than a reading resolves to more than a habit costs. */
    private static final double[] NOISES = {0.004, 0.006, 0.009, 0.013, 0.019, 0.028, 0.042};

    private static final double[] LOSSES = {0.001, 0.004, 0.008, 0.013, 0.02, 0.03, 0.045};

    /** Of scales that explain the data less well by so much nothing is lost (logarithm). */
    private static final double WORTH = 8;

    /** Beyond so many deviations above the middle a block counts less: luck, or a fault; least deviation (-): chosen. */
    private static final double LUCKY = 3;

    private static final double LEAST_DEVIATION = 0.005;
    private static final double NORMAL_OVER_MEDIAN = 1.4826;
    private static final int ROUNDS = 3;

    /** Of what a boat may differ by, so much of the variance must be known for anything, and for all of it, to be shown (-): chosen. */
    private static final double LEAST_KNOWN = 0.4;

    private static final double WELL_KNOWN = 0.9;

    /** Blocks that follow each other say so much of each other at most (-). */
    private static final double MOST_ALIKE = 0.8;

    private final List<SteadyBlock> blocks;
    private final Smooth smooth = new Smooth();
    private final double[][] rows;
    private final double[] seen;
    private double[] counts;
    private List<FrontierMode> modes = List.of();
    private double[] shares = {};

    /** Covariance of the weights with each session left out. */
    private List<RealMatrix> without = List.of();

    private SeasonFit(List<SteadyBlock> blocks) {
        this.blocks = List.copyOf(blocks);
        int sessions = blocks.stream().mapToInt(SteadyBlock::session).max().orElse(-1) + 1;
        int base = smooth.size();
        rows = new double[blocks.size()][];
        seen = new double[blocks.size()];
        counts = new double[blocks.size()];
        for (int i = 0; i < rows.length; i++) {
            SteadyBlock block = blocks.get(i);
            double[] row = new double[base + EFFECTS * sessions];
            smooth.fill(row, block.wind(), block.angle());
            int own = base + EFFECTS * block.session();
            row[own] = block.doubt().offset();
            row[own + 1] = block.doubt().upwash();
            row[own + 2] = block.doubt().factor();
            row[own + 3] = SESSION_OFF;
            rows[i] = row;
            seen[i] = block.logRatio();
        }
    }

    /**
     * Best speed over that of the model at each of those winds and angles.
     *
     * @param blocks in the order of time within each session
     * @param winds (m/s)
     * @param angles (rad)
     * @return by wind, then angle
     */
    public static List<LearnedPlace> of(List<SteadyBlock> blocks, List<Double> winds, List<Double> angles) {
        SeasonFit fit = new SeasonFit(blocks);
        if (!blocks.isEmpty()) {
            fit.fit();
        }
        List<LearnedPlace> places = new ArrayList<>();
        for (double wind : winds) {
            for (double angle : angles) {
                places.add(fit.at(wind, angle));
            }
        }
        return places;
    }

    private void fit() {
        double[] off = seen.clone();
        for (int round = 0; round < ROUNDS; round++) {
            double each = round == 0 ? 1 : independence(off);
            double[] luck = luck(off);
            for (int i = 0; i < counts.length; i++) {
                counts[i] = each * luck[i];
            }
            weigh();
            off = FrontierMode.off(rows, seen, mean());
        }
        FrontierMode best = modes.stream()
                .max(Comparator.comparingDouble(FrontierMode::evidence))
                .orElseThrow();
        without = blocks.stream()
                .map(SteadyBlock::session)
                .distinct()
                .map(session -> without(session, best))
                .toList();
    }

    private RealMatrix without(int session, FrontierMode best) {
        double[] others = counts.clone();
        for (int i = 0; i < others.length; i++) {
            others[i] = blocks.get(i).session() == session ? 0 : others[i];
        }
        return best.covarianceOf(rows, seen, others);
    }

    /** Finds the modes of all pairs of scales that are worth it, from the middle outwards. */
    private void weigh() {
        List<FrontierMode> found = new ArrayList<>();
        double[] start = modes.isEmpty() ? new double[rows[0].length] : mean();
        for (double noise : NOISES) {
            for (double loss : LOSSES) {
                FrontierMode mode = FrontierMode.of(rows, seen, counts, new Frontier(noise, loss), start);
                // Beforehand each size of noise and loss is as probable as another, and the scales rise by ratios.
                found.add(mode.heldAsProbableAs(noise * loss));
                start = mode.weights();
            }
        }
        double best = found.stream().mapToDouble(FrontierMode::evidence).max().orElse(0);
        modes = found.stream().filter(mode -> mode.evidence() > best - WORTH).toList();
        shares = modes.stream()
                .mapToDouble(mode -> StrictMath.exp(mode.evidence() - best))
                .toArray();
        double sum = Arrays.stream(shares).sum();
        for (int i = 0; i < shares.length; i++) {
            shares[i] /= sum;
        }
    }

    private double[] mean() {
        double[] mean = new double[rows[0].length];
        for (int k = 0; k < shares.length; k++) {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += shares[k] * modes.get(k).weights()[i];
            }
        }
        return mean;
    }

    /** What each block counts by how far it lies above the middle of all (-). */
    private static double[] luck(double[] off) {
        double middle = Median.of(off);
        double deviation = Math.max(
                LEAST_DEVIATION,
                NORMAL_OVER_MEDIAN
                        * Median.of(Arrays.stream(off)
                                .map(one -> Math.abs(one - middle))
                                .toArray()));
        double[] luck = new double[off.length];
        for (int i = 0; i < off.length; i++) {
            double far = (off[i] - middle) / deviation;
            luck[i] = far > LUCKY ? LUCKY * LUCKY / (far * far) : 1;
        }
        return luck;
    }

    /** What a block counts where blocks that follow each other are alike (-): that of a first-order autoregression's mean. */
    private double independence(double[] off) {
        double mean = Arrays.stream(off).average().orElse(0);
        double product = 0;
        double square = 0;
        for (int i = 1; i < off.length; i++) {
            if (blocks.get(i).session() == blocks.get(i - 1).session()) {
                product += (off[i] - mean) * (off[i - 1] - mean);
                square += (off[i] - mean) * (off[i] - mean);
            }
        }
        double alike = square > 0 ? Math.max(0, Math.min(MOST_ALIKE, product / square)) : 0;
        return (1 - alike) / (1 + alike);
    }

    private LearnedPlace at(double wind, double angle) {
        double[] row = new double[rows.length == 0 ? smooth.size() : rows[0].length];
        smooth.fill(row, wind, angle);
        double mean = 0;
        double square = 0;
        for (int k = 0; k < shares.length; k++) {
            FrontierMode mode = modes.get(k);
            double one = FrontierMode.dot(row, mode.weights());
            double own = FrontierMode.dot(row, mode.covariance().operate(row));
            mean += shares[k] * one;
            square += shares[k] * (one * one + own);
        }
        double before = Smooth.SIZE * Smooth.SIZE;
        double variance = shares.length == 0 ? before : Math.min(before, Math.max(0, square - mean * mean));
        Support near = Support.of(blocks, wind, angle);
        double support = ramp(1 - withoutAny(row) / before, LEAST_KNOWN, WELL_KNOWN);
        // What is not learnt is the model's, of which nothing is known beyond what it may differ by.
        double rest = 1 - support;
        double error = StrictMath.sqrt(support * support * variance + rest * rest * before);
        return new LearnedPlace(
                wind, angle, support > 0 ? support * mean : 0, error, support, near.seconds(), near.sessions());
    }

    /** Variance that is left where the session that says most is left out. */
    private double withoutAny(double[] row) {
        double most = without.isEmpty() ? Smooth.SIZE * Smooth.SIZE : 0;
        for (RealMatrix covariance : without) {
            most = Math.max(most, FrontierMode.dot(row, covariance.operate(row)));
        }
        return most;
    }

    /** 0 up to a value, 1 from another, smooth between. */
    private static double ramp(double value, double from, double to) {
        double share = Math.max(0, Math.min(1, (value - from) / (to - from)));
        return share * share * (3 - 2 * share);
    }
}
