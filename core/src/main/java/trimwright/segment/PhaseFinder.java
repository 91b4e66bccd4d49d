package trimwright.segment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.units.Angles;
import trimwright.units.Circular;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/** Finds phases by growing each one as long as all of its wind angles stay near their median. */
final class PhaseFinder {
    private static final double SHORTEST = 10.0;
    private static final double STEADY_RATE = Math.toRadians(3);
    private static final double NEAR_MEDIAN = Math.toRadians(8);

    private final WindTrack track;
    private final Courses courses;
    private final int shortest;

    private PhaseFinder(WindTrack track, Courses courses) {
        this.track = track;
        this.courses = courses;
        this.shortest = track.clock().steps(SHORTEST);
    }

    static List<Phase> find(WindTrack track, Courses courses, List<Leg> legs, List<Turn> turns) {
        PhaseFinder finder = new PhaseFinder(track, courses);
        boolean[] turning = new boolean[track.size()];
        turns.forEach(
                turn -> Arrays.fill(turning, turn.span().from(), turn.span().to(), true));
        List<Phase> phases = new ArrayList<>();
        for (Leg leg : legs) {
            int i = leg.span().from();
            while (i < leg.span().to()) {
                int from = i;
                while (i < leg.span().to() && !turning[i] && finder.isSteady(from, i)) {
                    i++;
                }
                finder.cut(leg.kind(), from, i, phases);
                i = Math.max(i, from + 1);
            }
        }
        return phases;
    }

    /** Whether the sample may stand in a phase that began at {@code from}. */
    private boolean isSteady(int from, int i) {
        return Math.abs(track.get(Quantity.RATE_OF_TURN, i)) < STEADY_RATE
                && !Double.isNaN(courses.windAngle[i])
                && !Double.isNaN(track.get(Quantity.SPEED, i))
                && courses.tack[i] == courses.tack[from];
    }

    private void cut(PointOfSail on, int from, int to, List<Phase> phases) {
        int start = from;
        while (to - start >= shortest) {
            int end = grow(start, to);
            if (end - start >= shortest) {
                if (sails(start, end)) {
                    phases.add(new Phase(on, new Span(start, end), courses.tack[start]));
                }
                start = end;
            } else {
                start++;
            }
        }
    }

    private boolean sails(int from, int to) {
        return Math.abs(Circular.mean(courses.windAngle, from, to)) > LegFinder.NO_GO;
    }

    /** The greatest end up to which every wind angle is near the median of all. */
    private int grow(int start, int to) {
        Growing angles = new Growing(courses.windAngle[start], shortest);
        int end = start;
        while (end < to && angles.add(courses.windAngle[end])) {
            end++;
        }
        return end;
    }

    /** Sorted ways from a first angle, so that the median is at hand and wrapping is not felt. */
    private static final class Growing {
        private final double first;
        private double[] sorted;
        private int size;

        Growing(double first, int capacity) {
            this.first = first;
            this.sorted = new double[capacity];
        }

        /** Takes the angle in; false if then one of all would be too far from the median. */
        boolean add(double angle) {
            if (size == sorted.length) {
                sorted = Arrays.copyOf(sorted, 2 * size);
            }
            double way = Angles.difference(angle, first);
            int place = Arrays.binarySearch(sorted, 0, size, way);
            place = place < 0 ? -place - 1 : place;
            System.arraycopy(sorted, place, sorted, place + 1, size - place);
            sorted[place] = way;
            size++;
            double median = (sorted[(size - 1) / 2] + sorted[size / 2]) / 2;
            return sorted[size - 1] - median <= NEAR_MEDIAN && median - sorted[0] <= NEAR_MEDIAN;
        }
    }
}
