package trimwright.segment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.units.Angles;
import trimwright.units.Circular;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * Finds phases by growing each one as long as wind angle and speed stay near their medians and the bow goes round slowly.
 * Steering about a mean course and a gust's short answer are part of straight sailing: short departures are bridged.
 */
final class PhaseFinder {
    private static final double SHORTEST = 10.0;
    private static final double STEADY_RATE = Math.toRadians(3);
    private static final double NEAR_MEDIAN = Math.toRadians(8);

    /** Speed stays within this share of its median (-), chosen: a boat that gathers speed is not judged. */
    private static final double NEAR_SPEED = 0.25;

    /** A stretch whose last third is faster than its first by more is gathering speed (-): chosen. */
    private static final double GAIN = 0.15;

    /** The rate of turn that counts is the slope over this time to either side (s), chosen: longer than steering. */
    private static final double RATE_WINDOW = 3.0;

    /** A departure that is over sooner (s) does not end a phase (chosen: the shortest phase). */
    private static final double DEPARTURE = 10.0;

    private final WindTrack track;
    private final Courses courses;
    private final int shortest;
    private final int departure;
    private final int rateWindow;

    private PhaseFinder(WindTrack track, Courses courses) {
        this.track = track;
        this.courses = courses;
        this.shortest = track.clock().steps(SHORTEST);
        this.departure = track.clock().steps(DEPARTURE);
        this.rateWindow = track.clock().steps(RATE_WINDOW);
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
                while (i < leg.span().to() && !turning[i] && finder.isKnown(from, i)) {
                    i++;
                }
                finder.cut(leg.kind(), from, i, phases);
                i = Math.max(i, from + 1);
            }
        }
        return phases;
    }

    /** Whether the sample may stand in a phase that began at {@code from}. */
    private boolean isKnown(int from, int i) {
        return !Double.isNaN(courses.windAngle[i])
                && !Double.isNaN(track.get(Quantity.SPEED, i))
                && courses.tack[i] == courses.tack[from];
    }

    private void cut(PointOfSail on, int from, int to, List<Phase> phases) {
        int start = from;
        while (to - start >= shortest) {
            int end = isSteady(start, from, to) ? grow(start, from, to) : start;
            if (end - start >= shortest) {
                if (sails(on, start, end) && !isGathering(start, end)) {
                    add(new Phase(on, new Span(start, end), courses.tack[start]), from, phases);
                }
                start = end;
            } else {
                start++;
            }
        }
    }

    /** Adds a phase, or lengthens the last one of the same straight stretch where both are sailed alike. */
    private void add(Phase phase, int first, List<Phase> phases) {
        if (!phases.isEmpty()) {
            Span last = phases.get(phases.size() - 1).span();
            boolean isSameStretch = last.from() >= first && phase.span().from() - last.to() < departure;
            if (isSameStretch && isAlike(last, phase.span())) {
                Span both = new Span(last.from(), phase.span().to());
                phases.set(phases.size() - 1, new Phase(phase.kind(), both, phase.tack()));
                return;
            }
        }
        phases.add(phase);
    }

    /** Whether means of wind angle and speed differ by no more than a phase may depart from its median. */
    private boolean isAlike(Span a, Span b) {
        double angle = Angles.difference(
                Circular.mean(courses.windAngle, a.from(), a.to()), Circular.mean(courses.windAngle, b.from(), b.to()));
        double before = mean(a.from(), a.to());
        return Math.abs(angle) < NEAR_MEDIAN && Math.abs(mean(b.from(), b.to()) - before) < NEAR_SPEED * before;
    }

    /** Off the wind far enough, and on a beat or run at such an angle: else the boat gathers speed on a reach. */
    private boolean sails(PointOfSail on, int from, int to) {
        double angle = Circular.mean(courses.windAngle, from, to);
        return Math.abs(angle) > LegFinder.NO_GO && (!on.isJudgedByVmg() || on.next(angle) == on);
    }

    /** Whether the last third is that much faster than the first. */
    private boolean isGathering(int from, int to) {
        int third = (to - from) / 3;
        double first = mean(from, from + third);
        return mean(to - third, to) > (1 + GAIN) * first;
    }

    private double mean(int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += track.get(Quantity.SPEED, i);
        }
        return sum / (to - from);
    }

    /** Whether the bow goes round slowly there, by headings of the straight stretch only. */
    private boolean isSteady(int i, int first, int end) {
        int from = Math.max(first, i - rateWindow);
        int to = Math.min(end - 1, i + rateWindow);
        double way = Angles.difference(courses.heading[to], courses.heading[from]);
        return Math.abs(way) < STEADY_RATE * (to - from) * track.clock().step();
    }

    /** The greatest end up to which wind angles and speeds are near their medians, short departures apart. */
    private int grow(int start, int first, int to) {
        Growing angles = new Growing(shortest);
        Growing speeds = new Growing(shortest);
        double firstAngle = courses.windAngle[start];
        int end = start;
        for (int i = start; i < to && i - end <= departure; i++) {
            double way = Angles.difference(courses.windAngle[i], firstAngle);
            double speed = track.get(Quantity.SPEED, i);
            if (!isSteady(i, first, to)) {
                continue;
            }
            angles.add(way);
            speeds.add(speed);
            if (angles.isWithin(NEAR_MEDIAN) && speeds.isWithin(NEAR_SPEED * speeds.median())) {
                end = i + 1;
            } else {
                angles.remove(way);
                speeds.remove(speed);
            }
        }
        return end;
    }

    /** Values kept sorted, so that their median is at hand. */
    private static final class Growing {
        private double[] sorted;
        private int size;

        Growing(int capacity) {
            this.sorted = new double[capacity];
        }

        void add(double value) {
            if (size == sorted.length) {
                sorted = Arrays.copyOf(sorted, 2 * size);
            }
            int place = place(value);
            System.arraycopy(sorted, place, sorted, place + 1, size - place);
            sorted[place] = value;
            size++;
        }

        void remove(double value) {
            int place = place(value);
            System.arraycopy(sorted, place + 1, sorted, place, size - place - 1);
            size--;
        }

        private int place(double value) {
            int place = Arrays.binarySearch(sorted, 0, size, value);
            return place < 0 ? -place - 1 : place;
        }

        double median() {
            return (sorted[(size - 1) / 2] + sorted[size / 2]) / 2;
        }

        /** Whether all values are so near to their median. */
        boolean isWithin(double distance) {
            return sorted[size - 1] - median() <= distance && median() - sorted[0] <= distance;
        }
    }
}
