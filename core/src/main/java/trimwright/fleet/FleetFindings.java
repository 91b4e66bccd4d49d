package trimwright.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import trimwright.segment.Pieces;
import trimwright.segment.PointOfSail;
import trimwright.wind.WindTrack;

/**
 * What each boat of a session did otherwise than the mean of the others, up and down the wind.
 *
 * @param block length of the stretches of time that count as independent (s)
 * @param differences all that was asked and could be answered, told or not: by point of sail, question, boat
 */
public record FleetFindings(double block, List<Difference> differences) {
    /** Share of false ones among what is told: chosen, the usual one. */
    public static final double FALSE_SHARE = 0.05;

    private static final List<PointOfSail> ASKED = List.of(PointOfSail.UPWIND, PointOfSail.DOWNWIND);

    public FleetFindings {
        differences = List.copyOf(differences);
    }

    /**
     * Of boats on one clock; nothing with fewer than two.
     *
     * @param tracks one a boat
     * @param pieces what their days were cut into, in the same order
     */
    public static FleetFindings of(List<WindTrack> tracks, List<Pieces> pieces) {
        if (tracks.size() < 2) {
            return new FleetFindings(BlockLength.LEAST, List.of());
        }
        List<String> names = tracks.stream().map(WindTrack::boat).toList();
        List<Moments> ways =
                ASKED.stream().map(on -> new Moments(tracks, pieces, on)).toList();
        double block = BlockLength.of(
                ways.stream().flatMap(moments -> residuals(moments).stream()).toList());
        List<Difference> found = new ArrayList<>();
        for (Moments moments : ways) {
            for (Question question : Question.values()) {
                found.addAll(
                        question == Question.TURN
                                ? TurnsCompared.ask(names, pieces, moments.on())
                                : new Comparing(moments, question, block).ask(names));
            }
        }
        return new FleetFindings(block, judged(found));
    }

    /** Those that stand, the surest first. */
    public List<Difference> told() {
        return differences.stream()
                .filter(Difference::isTold)
                .sorted((a, b) -> Double.compare(a.chance(), b.chance()))
                .toList();
    }

    /** The same, those of one boat on one point of sail together, in the order of their surest. */
    public List<List<Difference>> toldTogether() {
        return List.copyOf(told().stream()
                .collect(Collectors.groupingBy(
                        one -> List.of(one.boat(), one.on()), LinkedHashMap::new, Collectors.toList()))
                .values());
    }

    private static List<Difference> judged(List<Difference> found) {
        List<Difference> judged = new ArrayList<>(found);
        for (Question.Family family : Question.Family.values()) {
            int[] of = new int[found.size()];
            int n = 0;
            for (int i = 0; i < found.size(); i++) {
                if (found.get(i).question().family() == family) {
                    of[n++] = i;
                }
            }
            double[] chances = Arrays.stream(of, 0, n)
                    .mapToDouble(i -> found.get(i).chance())
                    .toArray();
            boolean[] told = FalseDiscoveries.told(chances, FALSE_SHARE);
            for (int k = 0; k < n; k++) {
                judged.set(of[k], found.get(of[k]).told(told[k]));
            }
        }
        return judged;
    }

    /** Progress less the moment's mean less the boat's own mean of that: one value a second of the session, a row a boat. */
    private static List<double[]> residuals(Moments moments) {
        int second = moments.clock().steps(1);
        List<double[]> rows = new ArrayList<>();
        for (int b = 0; b < moments.boats(); b++) {
            double[] row = new double[moments.clock().size() / second + 1];
            Arrays.fill(row, Double.NaN);
            rows.add(row);
        }
        for (Moments.Moment moment : moments.all()) {
            double mean = 0;
            for (int boat : moment.boats()) {
                mean += moments.value(Question.PROGRESS, moment, boat) / moment.boats().length;
            }
            for (int boat : moment.boats()) {
                rows.get(boat)[moment.at() / second] = moments.value(Question.PROGRESS, moment, boat) - mean;
            }
        }
        for (double[] row : rows) {
            double mean =
                    Arrays.stream(row).filter(v -> !Double.isNaN(v)).average().orElse(0);
            for (int i = 0; i < row.length; i++) {
                row[i] -= mean;
            }
        }
        return rows;
    }
}
