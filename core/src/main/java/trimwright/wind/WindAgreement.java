package trimwright.wind;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import trimwright.air.ApparentWind;
import trimwright.units.Units;

/**
 * Finds what wind sensors read wrongly from this: all boats sail in one wind that changes slowly, whatever tack they are
 * on. A sensor set askew, upwash and a wrong factor each make wind that turns or grows with tack and point of sail. Least
 * squares over mean wind vectors of blocks of time, with a wind that walks at random and is common to all boats, and with
 * weak knowledge beforehand that errors are small. Boats that sailed on one tack alone get no answer.
 */
public final class WindAgreement {
    private static final double BLOCK = 20;

    /** Share of a block that must be known and steady (chosen). */
    private static final double ENOUGH = 0.5;

    /** Spread of a block's wind at one boat about the common wind, and its walk from block to block, over the mean (chosen). */
    private static final double SPREAD = 0.08;

    private static final double WALK = 0.03;

    /** What is known beforehand: standard deviations of angle, upwash, logarithm of the factor (chosen). */
    private static final double[] BEFOREHAND = {Units.fromDegrees(3), Units.fromDegrees(3), 0.03};

    /** Nothing is taken off where upwash is not known to this (rad), chosen: it then may be as wrong as what it mends. */
    private static final double LEAST_SURE = Units.fromDegrees(1);

    private static final double FAST_TURN = Units.fromDegrees(5);

    /** Slower boats, and fainter winds, say nothing (m/s, chosen). */
    private static final double SLOWEST = 1;

    private static final int EACH = 3;

    private final List<WindTrack> tracks;
    private final int blocks;
    private final int perBlock;
    private final double[] reference;
    private final List<Mean> means = new ArrayList<>();

    private WindAgreement(List<WindTrack> tracks) {
        this.tracks = tracks;
        SessionClock clock = tracks.get(0).clock();
        perBlock = clock.steps(BLOCK);
        blocks = (clock.size() + perBlock - 1) / perBlock;
        reference = new double[tracks.size()];
    }

    /** One for each track, in their order, all found from readings as they stand on one clock. */
    public static List<WindCorrection> of(List<WindTrack> tracks) {
        return tracks.isEmpty() ? List.of() : new WindAgreement(List.copyOf(tracks)).find();
    }

    /**
     * Wind of one boat in one block.
     *
     * @param wind north and east (m/s)
     * @param slopes of the wind over angle, upwash and logarithm of the factor, north and east (m/s)
     */
    private record Mean(int boat, int block, double[] wind, double[][] slopes) {}

    private List<WindCorrection> find() {
        for (int boat = 0; boat < tracks.size(); boat++) {
            reference[boat] = typicalWind(tracks.get(boat));
            for (int block = 0; block < blocks; block++) {
                mean(boat, block);
            }
        }
        if (means.isEmpty()) {
            return tracks.stream().map(track -> WindCorrection.NONE).toList();
        }
        int unknowns = EACH * tracks.size();
        RealMatrix normal = new Array2DRowRealMatrix(unknowns, unknowns);
        RealVector right = new ArrayRealVector(unknowns);
        for (int k = 0; k < unknowns; k++) {
            normal.setEntry(k, k, 1 / (BEFOREHAND[k % EACH] * BEFOREHAND[k % EACH]));
        }
        double size = means.stream()
                .mapToDouble(mean -> StrictMath.hypot(mean.wind[0], mean.wind[1]))
                .average()
                .orElse(Double.NaN);
        for (int axis = 0; axis < 2; axis++) {
            addTo(normal, right, axis, size);
        }
        RealMatrix spread = new CholeskyDecomposition(normal).getSolver().getInverse();
        RealVector found = spread.operate(right);
        List<WindCorrection> corrections = new ArrayList<>();
        for (int boat = 0; boat < tracks.size(); boat++) {
            int k = EACH * boat;
            double error = Math.sqrt(spread.getEntry(k + 1, k + 1));
            double factor = StrictMath.exp(found.getEntry(k + 2));
            corrections.add(
                    error > LEAST_SURE
                            ? WindCorrection.NONE
                            : new WindCorrection(
                                    found.getEntry(k),
                                    new WindCorrection.Upwash(found.getEntry(k + 1), reference[boat]),
                                    factor,
                                    new WindCorrection.Errors(
                                            Math.sqrt(spread.getEntry(k, k)),
                                            error,
                                            factor * Math.sqrt(spread.getEntry(k + 2, k + 2)))));
        }
        return corrections;
    }

    /** Median of the apparent wind while sailing (m/s). */
    private static double typicalWind(WindTrack track) {
        double[] speeds = new double[track.size()];
        int count = 0;
        for (int i = 0; i < track.size(); i++) {
            double speed = track.get(Quantity.AWS, i);
            if (speed > SLOWEST && track.get(Quantity.SPEED, i) > SLOWEST) {
                speeds[count++] = speed;
            }
        }
        Arrays.sort(speeds, 0, count);
        return count == 0 ? 1 : speeds[count / 2];
    }

    private void mean(int boat, int block) {
        WindTrack track = tracks.get(boat);
        double[] wind = new double[2];
        double[][] slopes = new double[EACH][2];
        int count = 0;
        int to = Math.min(track.size(), (block + 1) * perBlock);
        for (int i = block * perBlock; i < to; i++) {
            double speed = track.get(Quantity.RAW_TWS, i);
            double from = track.get(Quantity.RAW_TWD, i);
            ApparentWind felt = new ApparentWind(track.get(Quantity.AWS, i), track.get(Quantity.AWA, i));
            double towards = track.get(Quantity.HEADING, i) + felt.angle();
            double moves = track.get(Quantity.SPEED, i);
            double course = track.get(Quantity.COURSE, i);
            double feltNorth = felt.speed() * StrictMath.cos(towards);
            double feltEast = felt.speed() * StrictMath.sin(towards);
            double atSensor = StrictMath.hypot(
                    feltNorth - moves * StrictMath.cos(course), feltEast - moves * StrictMath.sin(course));
            boolean isSteady = Math.abs(track.get(Quantity.RATE_OF_TURN, i)) < FAST_TURN;
            if (!isSteady || !(moves > SLOWEST) || !(atSensor > SLOWEST) || Double.isNaN(speed + from)) {
                continue;
            }
            // The same share of a change at the sensor comes down to the reference height.
            double down = speed / atSensor;
            double share = WindCorrection.share(felt, reference[boat]);
            double[] turned = {-feltEast * down, feltNorth * down};
            double[] grown = {feltNorth * down, feltEast * down};
            wind[0] += speed * StrictMath.cos(from);
            wind[1] += speed * StrictMath.sin(from);
            for (int axis = 0; axis < 2; axis++) {
                slopes[0][axis] += turned[axis];
                slopes[1][axis] += turned[axis] * share;
                slopes[2][axis] += grown[axis];
            }
            count++;
        }
        if (count < ENOUGH * perBlock) {
            return;
        }
        for (int axis = 0; axis < 2; axis++) {
            wind[axis] /= count;
            for (double[] slope : slopes) {
                slope[axis] /= count;
            }
        }
        means.add(new Mean(boat, block, wind, slopes));
    }

    /** What one axis says once the common wind is eliminated. */
    private void addTo(RealMatrix normal, RealVector right, int axis, double size) {
        double weight = 1 / (SPREAD * size * SPREAD * size);
        double tie = 1 / (WALK * size * WALK * size);
        int unknowns = right.getDimension();
        double[] known = new double[blocks];
        double[] winds = new double[blocks];
        double[][] slopes = new double[unknowns][blocks];
        for (Mean mean : means) {
            known[mean.block] += weight;
            winds[mean.block] += weight * mean.wind[axis];
            for (int p = 0; p < EACH; p++) {
                int k = EACH * mean.boat + p;
                slopes[k][mean.block] += weight * mean.slopes[p][axis];
                right.addToEntry(k, weight * mean.slopes[p][axis] * mean.wind[axis]);
                for (int q = 0; q < EACH; q++) {
                    double product = mean.slopes[p][axis] * mean.slopes[q][axis];
                    normal.addToEntry(k, EACH * mean.boat + q, weight * product);
                }
            }
        }
        double[] common = solve(known, tie, winds);
        for (int k = 0; k < unknowns; k++) {
            right.addToEntry(k, -dot(slopes[k], common));
            double[] part = solve(known, tie, slopes[k]);
            for (int m = 0; m < k; m++) {
                double taken = dot(slopes[m], part);
                normal.addToEntry(m, k, -taken);
                normal.addToEntry(k, m, -taken);
            }
            normal.addToEntry(k, k, -dot(slopes[k], part));
        }
    }

    /** Solves the chain of blocks: each known by its weight and tied to its neighbours. */
    private static double[] solve(double[] known, double tie, double[] right) {
        int n = known.length;
        double[] ratio = new double[n];
        double[] value = new double[n];
        for (int b = 0; b < n; b++) {
            double ties = (b > 0 ? tie : 0) + (b < n - 1 ? tie : 0);
            double pivot = known[b] + ties - (b > 0 ? tie * ratio[b - 1] : 0);
            ratio[b] = tie / pivot;
            value[b] = (right[b] + (b > 0 ? tie * value[b - 1] : 0)) / pivot;
        }
        for (int b = n - 2; b >= 0; b--) {
            value[b] += ratio[b] * value[b + 1];
        }
        return value;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
