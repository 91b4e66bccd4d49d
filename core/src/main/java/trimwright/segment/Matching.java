package trimwright.segment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How well found pieces agree with true ones: a pair matches if it is of the same kind and overlap over union is one
 * half or more; each piece is in one pair at most, best pairs first.
 */
public final class Matching {
    private static final double LEAST_OVERLAP = 0.5;

    private Matching() {}

    /**
     * A piece of time under a label.
     *
     * @param kind compared by equality
     * @param from start (s)
     * @param to end (s)
     */
    public record Labelled(Object kind, double from, double to) {}

    /** Numbers of matched, found and true pieces. */
    public record Count(int matched, int found, int truth) {
        /** Share of the found that is true; 1 where nothing was found. */
        public double precision() {
            return found == 0 ? 1 : (double) matched / found;
        }

        /** Share of the true that was found; 1 where there is nothing to find. */
        public double recall() {
            return truth == 0 ? 1 : (double) matched / truth;
        }
    }

    private record Pair(int found, int truth, double overlap) {}

    public static Count count(List<Labelled> found, List<Labelled> truth) {
        List<Pair> pairs = new ArrayList<>();
        for (int f = 0; f < found.size(); f++) {
            for (int t = 0; t < truth.size(); t++) {
                double overlap = overlapOverUnion(found.get(f), truth.get(t));
                if (overlap >= LEAST_OVERLAP
                        && found.get(f).kind().equals(truth.get(t).kind())) {
                    pairs.add(new Pair(f, t, overlap));
                }
            }
        }
        pairs.sort(Comparator.comparingDouble(Pair::overlap).reversed());
        boolean[] usedFound = new boolean[found.size()];
        boolean[] usedTruth = new boolean[truth.size()];
        int matched = 0;
        for (Pair pair : pairs) {
            if (!usedFound[pair.found] && !usedTruth[pair.truth]) {
                usedFound[pair.found] = true;
                usedTruth[pair.truth] = true;
                matched++;
            }
        }
        return new Count(matched, found.size(), truth.size());
    }

    static double overlapOverUnion(Labelled a, Labelled b) {
        double overlap = Math.min(a.to(), b.to()) - Math.max(a.from(), b.from());
        double union = Math.max(a.to(), b.to()) - Math.min(a.from(), b.from());
        return overlap <= 0 || union <= 0 ? 0 : overlap / union;
    }
}
