package trimwright.learned;

import java.util.List;
import java.util.stream.IntStream;
import trimwright.units.Units;

/**
 * What a season taught of a boat's best speed on her foils, over a grid of winds and angles. It never takes the model's place:
 * {@link LearnedBook} makes a second book of both.
 *
 * @param winds true (m/s), rising, at least two
 * @param angles true wind angles from the course (rad), rising, at least two
 * @param places by wind, then angle
 */
public record LearnedTargets(List<Double> winds, List<Double> angles, List<LearnedPlace> places) {
    public LearnedTargets {
        winds = List.copyOf(winds);
        angles = List.copyOf(angles);
        places = List.copyOf(places);
        if (winds.size() < 2 || angles.size() < 2 || places.size() != winds.size() * angles.size()) {
            throw new IllegalArgumentException("a grid of " + winds.size() + " winds and " + angles.size()
                    + " angles with " + places.size() + " places");
        }
    }

    /** Learns on winds of 4 to 28 knots by 2 and angles of 30 to 170 degrees by 5. */
    public static LearnedTargets of(List<SteadyBlock> blocks) {
        List<Double> winds = steps(Units.fromKnots(4), Units.fromKnots(2), 13);
        List<Double> angles = steps(Units.fromDegrees(30), Units.fromDegrees(5), 29);
        return new LearnedTargets(winds, angles, SeasonFit.of(blocks, winds, angles));
    }

    private static List<Double> steps(double from, double by, int count) {
        return IntStream.range(0, count).mapToObj(i -> from + i * by).toList();
    }

    /** Whether there is any place at which sailing says more than the model. */
    public boolean isAnything() {
        return places.stream().anyMatch(LearnedPlace::isSupported);
    }

    /** Logarithm of best speed over that of the model (-), linear between the places; 0 outside them. */
    public double logRatio(double wind, double angle) {
        int i = cell(winds, wind);
        int j = cell(angles, angle);
        if (i < 0 || j < 0) {
            return 0;
        }
        double s = (wind - winds.get(i)) / (winds.get(i + 1) - winds.get(i));
        double t = (angle - angles.get(j)) / (angles.get(j + 1) - angles.get(j));
        double low = at(i, j).logRatio() * (1 - t) + at(i, j + 1).logRatio() * t;
        double high = at(i + 1, j).logRatio() * (1 - t) + at(i + 1, j + 1).logRatio() * t;
        return low * (1 - s) + high * s;
    }

    /** The place nearest to a wind (m/s) and angle (rad). */
    public LearnedPlace nearest(double wind, double angle) {
        return at(nearest(winds, wind), nearest(angles, angle));
    }

    private LearnedPlace at(int wind, int angle) {
        return places.get(wind * angles.size() + angle);
    }

    private static int nearest(List<Double> nodes, double value) {
        int best = 0;
        for (int i = 1; i < nodes.size(); i++) {
            best = Math.abs(nodes.get(i) - value) < Math.abs(nodes.get(best) - value) ? i : best;
        }
        return best;
    }

    /** Index of the node below, -1 outside; a hair beyond the ends, as conversions of units leave it, is inside. */
    private static int cell(List<Double> nodes, double value) {
        double hair = 1e-9;
        int last = nodes.size() - 1;
        if (!(value >= nodes.get(0) - hair && value <= nodes.get(last) + hair)) {
            return -1;
        }
        int i = 0;
        while (i < last - 1 && value >= nodes.get(i + 1)) {
            i++;
        }
        return i;
    }
}
