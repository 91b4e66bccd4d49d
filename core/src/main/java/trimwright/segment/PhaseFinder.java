package trimwright.segment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import trimwright.units.Angles;
import trimwright.units.Circular;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * Finds phases in the straight stretches between turns: up and down the wind where the {@link HeldCourse} is kept, or
 * the boat makes for its mark; on reaches by growing each as long as the wind angle stays near its median. Steering about a mean
 * course, a gust's short answer and short gaps are part of straight sailing: short departures are bridged.
 */
final class PhaseFinder {
    private static final double SHORTEST = 10.0;
    private static final double STEADY_RATE = Math.toRadians(3);
    private static final double NEAR_MEDIAN = Math.toRadians(8);

    /** The rate of turn that counts is the slope over this time to either side (s), chosen: longer than steering. */
    private static final double RATE_WINDOW = 3.0;

    /** A departure that is over sooner (s) does not end a phase (chosen: the shortest phase). */
    private static final double DEPARTURE = 10.0;

    /** A turn ends near the new course; this long (s) it is left to settle (chosen). */
    private static final double SETTLES = 1.0;

    /** On a tack sailed for less (s) of a leg both tacks together say what is held (chosen). */
    private static final double LEAST_ON_TACK = 30.0;

    private final WindTrack track;
    private final Courses courses;
    private final @Nullable OnCourse on;
    private final boolean[] turning;
    private final int shortest;
    private final int departure;
    private final int rateWindow;

    private PhaseFinder(WindTrack track, Courses courses, List<Turn> turns, @Nullable OnCourse on) {
        this.track = track;
        this.courses = courses;
        this.on = on;
        this.shortest = track.clock().steps(SHORTEST);
        this.departure = track.clock().steps(DEPARTURE);
        this.rateWindow = track.clock().steps(RATE_WINDOW);
        this.turning = new boolean[track.size()];
        int settles = track.clock().steps(SETTLES);
        for (Turn turn : turns) {
            int to = Math.min(track.size(), turn.span().to() + settles);
            Arrays.fill(turning, turn.span().from(), to, true);
        }
    }

    /** @param on the boat on its course, or null without one */
    static List<Phase> find(WindTrack track, Courses courses, List<Leg> legs, List<Turn> turns, @Nullable OnCourse on) {
        PhaseFinder finder = new PhaseFinder(track, courses, turns, on);
        List<Phase> phases = new ArrayList<>();
        for (Leg leg : legs) {
            finder.cut(leg, phases);
        }
        return phases;
    }

    private void cut(Leg leg, List<Phase> phases) {
        List<Span> stretches = stretches(leg.span());
        if (leg.kind().isJudgedByVmg()) {
            Map<Tack, HeldCourse> held = held(leg.kind(), stretches);
            Laying laying = on == null ? null : Laying.of(track, on, leg, stretches);
            for (Span stretch : stretches) {
                HeldCourse course = held.get(courses.tack[stretch.from()]);
                IntPredicate holds = i -> isSteady(i, stretch)
                        && ((course != null && course.isKept(i)) || (laying != null && laying.isOnItsWay(i)));
                add(leg, stretch, kept(stretch, holds), phases);
            }
        } else {
            stretches.forEach(stretch -> add(leg, stretch, grown(stretch), phases));
        }
    }

    /** Parts of a stretch; on its tack, for a part may begin where the wind is not known. */
    private void add(Leg leg, Span stretch, List<Span> parts, List<Phase> phases) {
        for (Span span : parts) {
            if (Math.abs(Circular.mean(courses.windAngle, span.from(), span.to())) > LegFinder.NO_GO) {
                phases.add(new Phase(leg.kind(), span, courses.tack[stretch.from()]));
            }
        }
    }

    /** Stretches on one tack outside turns, begun and ended by known instants; short gaps stay inside. */
    private List<Span> stretches(Span leg) {
        List<Span> stretches = new ArrayList<>();
        int i = leg.from();
        while (i < leg.to()) {
            if (turning[i] || !isKnown(i)) {
                i++;
                continue;
            }
            int from = i;
            int end = i + 1;
            while (i < leg.to()
                    && !turning[i]
                    && i - end < departure
                    && (!isKnown(i) || courses.tack[i] == courses.tack[from])) {
                end = isKnown(i) ? i + 1 : end;
                i++;
            }
            stretches.add(new Span(from, end));
            i = end;
        }
        return stretches;
    }

    private boolean isKnown(int i) {
        return !Double.isNaN(courses.windAngle[i]) && !Double.isNaN(track.get(Quantity.SPEED, i));
    }

    /** What is held on each tack. */
    private Map<Tack, HeldCourse> held(PointOfSail kind, List<Span> stretches) {
        Map<Tack, HeldCourse> held = new EnumMap<>(Tack.class);
        int[] both = instants(stretches);
        for (Tack tack : Tack.values()) {
            int[] own = instants(stretches.stream()
                    .filter(stretch -> courses.tack[stretch.from()] == tack)
                    .toList());
            boolean isEnough = own.length >= track.clock().steps(LEAST_ON_TACK);
            HeldCourse course = HeldCourse.of(track, courses, kind, isEnough ? own : both);
            if (course != null) {
                held.put(tack, course);
            }
        }
        return held;
    }

    private static int[] instants(List<Span> spans) {
        return spans.stream()
                .flatMapToInt(span -> IntStream.range(span.from(), span.to()))
                .toArray();
    }

    /** Parts of a stretch in which something holds but for short departures. */
    private List<Span> kept(Span stretch, IntPredicate holds) {
        List<Span> kept = new ArrayList<>();
        int i = stretch.from();
        while (i < stretch.to()) {
            if (!holds.test(i)) {
                i++;
                continue;
            }
            int end = i + 1;
            for (int k = end; k < stretch.to() && k - end < departure; k++) {
                end = holds.test(k) ? k + 1 : end;
            }
            if (end - i >= shortest) {
                kept.add(new Span(i, end));
            }
            i = end;
        }
        return kept;
    }

    /** Parts of a stretch in which wind angles are near their median but for short departures. */
    private List<Span> grown(Span stretch) {
        List<Span> grown = new ArrayList<>();
        int start = stretch.from();
        while (stretch.to() - start >= shortest) {
            int end = isSteady(start, stretch) && isKnown(start) ? grow(start, stretch) : start;
            if (end - start >= shortest) {
                grown.add(new Span(start, end));
                start = end;
            } else {
                start++;
            }
        }
        return grown;
    }

    private int grow(int start, Span stretch) {
        RunningMedian angles = new RunningMedian(shortest);
        double first = courses.windAngle[start];
        int end = start;
        for (int i = start; i < stretch.to() && i - end <= departure; i++) {
            if (!isKnown(i) || !isSteady(i, stretch)) {
                continue;
            }
            double way = Angles.difference(courses.windAngle[i], first);
            angles.add(way);
            if (angles.isWithin(NEAR_MEDIAN)) {
                end = i + 1;
            } else {
                angles.remove(way);
            }
        }
        return end;
    }

    /** Whether the bow goes round slowly there, by known headings of the straight stretch only. */
    private boolean isSteady(int i, Span stretch) {
        int from = Math.max(stretch.from(), i - rateWindow);
        while (from < i && Double.isNaN(courses.heading[from])) {
            from++;
        }
        int to = Math.min(stretch.to() - 1, i + rateWindow);
        while (to > i && Double.isNaN(courses.heading[to])) {
            to--;
        }
        double way = Angles.difference(courses.heading[to], courses.heading[from]);
        return Math.abs(way) < STEADY_RATE * (to - from) * track.clock().step();
    }
}
