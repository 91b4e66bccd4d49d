package trimwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.units.Angles;
import trimwright.units.Circular;
import trimwright.wind.WindTrack;

/**
 * Finds turns: a stretch in which the bow goes round one way faster than steering does is one, where tack or point of sail
 * differ before and after. Two turns in one sweep, as a gybe and a round-up at a mark, part where the wind angle is that of
 * before on the other tack. A change that comes from the wind while the course is held is no turn; neither is a circle, nor
 * coming back to where it began, nor bearing away a little to gather speed.
 */
final class TurnFinder {
    /** Faster than this the bow goes round (rad/s): a phase is slower. */
    private static final double TURNING = Math.toRadians(3);

    private static final double LEAVES_BY = Math.toRadians(5);

    /** The rate is the slope over this time to either side (s), chosen: a turn lasts several seconds. */
    private static final double RATE_WINDOW = 0.5;

    /** A stop shorter than this does not end a turn (s), chosen. */
    private static final double STOP = 1.5;

    /** Nor does a longer one with the bow this near to the wind (rad): the boat hangs in the tack (chosen). */
    private static final double HANGS = Math.toRadians(25);

    private static final double LONGEST_STOP = 15;

    /** What went before and comes after is told from this time (s), chosen. */
    private static final double BESIDE = 3.0;

    /** Figures of before are means of up to this time (s), chosen. */
    private static final double STEADY_FOR = 10.0;

    /** The last of it (s) is left out: the turn has begun in it (chosen). */
    private static final double BEGINNING = 1.0;

    /** A turn of less is steering (chosen). */
    private static final double LEAST_ANGLE = Math.toRadians(10);

    /** On one tack a turn of less gathers speed or spends it (chosen: crews change course by 20 deg for that). */
    private static final double LEAST_ON_ONE_TACK = Math.toRadians(30);

    /** A turn of more is a circle, and one that takes longer is manoeuvring (chosen). */
    private static final double GREATEST_ANGLE = Math.toRadians(240);

    private static final double LONGEST = 60.0;

    private final WindTrack track;
    private final Courses courses;
    private final double[] rate;

    private TurnFinder(WindTrack track, Courses courses) {
        this.track = track;
        this.courses = courses;
        this.rate = rates(
                courses.heading, track.clock().steps(RATE_WINDOW), track.clock().step());
    }

    static List<Turn> find(WindTrack track, Courses courses) {
        return new TurnFinder(track, courses).find();
    }

    private static double[] rates(double[] heading, int half, double step) {
        double[] rate = new double[heading.length];
        for (int i = 0; i < rate.length; i++) {
            int from = Math.max(0, i - half);
            int to = Math.min(rate.length - 1, i + half);
            rate[i] = from == to ? 0 : Angles.difference(heading[to], heading[from]) / ((to - from) * step);
        }
        return rate;
    }

    private record Found(TurnKind kind, Span span, double angle) {}

    private List<Turn> find() {
        List<Found> found = new ArrayList<>();
        for (Span sweep : sweeps()) {
            for (Found turn : turnsOf(sweep)) {
                found.add(new Found(turn.kind(), ends(turn.span()), turn.angle()));
            }
        }
        List<Turn> turns = new ArrayList<>();
        for (int k = 0; k < found.size(); k++) {
            Found turn = found.get(k);
            int last = k == 0 ? 0 : found.get(k - 1).span().to();
            int next = k + 1 < found.size() ? found.get(k + 1).span().from() : track.size();
            turns.add(TurnFigures.of(track, turn.kind(), turn.span(), before(turn.span(), last), turn.angle(), next));
        }
        return turns;
    }

    /** From the heading leaving that of before by 5 deg until it is within 4 deg of that at the sweep's end. */
    private Span ends(Span sweep) {
        double before = Circular.mean(
                courses.heading, Math.max(0, sweep.from() - track.clock().steps(BESIDE)), Math.max(1, sweep.from()));
        int from = sweep.from();
        while (from < sweep.to() - 1 && !(Math.abs(Angles.difference(courses.heading[from], before)) > LEAVES_BY)) {
            from++;
        }
        double after = courses.heading[Math.min(sweep.to(), track.size() - 1)];
        int to = sweep.to();
        while (to > from + 1 && Math.abs(Angles.difference(courses.heading[to - 1], after)) < Courses.HELD_WITHIN) {
            to--;
        }
        return new Span(from, to);
    }

    /** Up to some seconds before the turn, not back into the last one. */
    private Span before(Span turn, int last) {
        int from = Math.max(
                Math.min(last, turn.from() - 1), turn.from() - track.clock().steps(STEADY_FOR));
        return new Span(
                Math.max(0, from),
                Math.max(Math.max(0, from) + 1, turn.from() - track.clock().steps(BEGINNING)));
    }

    /** Stretches in which the bow goes round one way. */
    private List<Span> sweeps() {
        List<Span> sweeps = new ArrayList<>();
        int i = 0;
        while (i < rate.length) {
            if (!(Math.abs(rate[i]) >= TURNING)) {
                i++;
                continue;
            }
            double way = Math.signum(rate[i]);
            int from = i;
            while (i < rate.length && rate[i] * way >= TURNING) {
                i++;
            }
            int last = sweeps.size() - 1;
            if (last >= 0 && goesOn(sweeps.get(last), from, way)) {
                sweeps.set(last, new Span(sweeps.get(last).from(), i));
            } else {
                sweeps.add(new Span(from, i));
            }
        }
        return sweeps;
    }

    /** Whether a sweep that begins there is the same as the last one after a stop. */
    private boolean goesOn(Span last, int from, double way) {
        if (rate[last.to() - 1] * way < 0 || (from - last.to()) * track.clock().step() > LONGEST_STOP) {
            return false;
        }
        if ((from - last.to()) * track.clock().step() < STOP) {
            return true;
        }
        for (int i = last.to(); i < from; i++) {
            if (!(Math.abs(courses.windAngle[i]) < HANGS)) {
                return false;
            }
        }
        return true;
    }

    private List<Found> turnsOf(Span sweep) {
        double angle = way(sweep);
        double before = mean(sweep.from() - track.clock().steps(BESIDE), sweep.from());
        double after = mean(sweep.to(), sweep.to() + track.clock().steps(BESIDE));
        if (Double.isNaN(before)
                || Double.isNaN(after)
                || !(Math.abs(angle) >= LEAST_ANGLE && Math.abs(angle) <= GREATEST_ANGLE)
                || sweep.length() * track.clock().step() > LONGEST) {
            return List.of();
        }
        int parts = Tack.of(before) == Tack.of(after) ? -1 : partsAt(sweep, before);
        if (parts > sweep.from() && parts < sweep.to()) {
            Span first = new Span(sweep.from(), parts);
            Span second = new Span(parts, sweep.to());
            TurnKind onward = onOneTack(-before, after, way(second));
            if (onward != null) {
                return List.of(
                        new Found(acrossTheWind(before, way(first)), first, way(first)),
                        new Found(onward, second, way(second)));
            }
        }
        TurnKind kind =
                Tack.of(before) == Tack.of(after) ? onOneTack(before, after, angle) : acrossTheWind(before, angle);
        return kind == null ? List.of() : List.of(new Found(kind, sweep, angle));
    }

    /** First instant at which the wind is as far on the other side as it was before. */
    private int partsAt(Span sweep, double before) {
        boolean throughBow = acrossTheWind(before, way(sweep)) == TurnKind.TACK;
        for (int i = sweep.from(); i < sweep.to(); i++) {
            double now = courses.windAngle[i];
            boolean isAcross = now * before < 0;
            boolean isAsFar = throughBow ? Math.abs(now) >= Math.abs(before) : Math.abs(now) <= Math.abs(before);
            if (isAcross && isAsFar) {
                return i;
            }
        }
        return -1;
    }

    /** The wind angle followed without wrapping stays within pi where the bow passes through the wind. */
    private static TurnKind acrossTheWind(double before, double turned) {
        return Math.abs(before - turned) <= Math.PI ? TurnKind.TACK : TurnKind.GYBE;
    }

    private static @Nullable TurnKind onOneTack(double before, double after, double turned) {
        if (PointOfSail.of(before) == PointOfSail.of(after) || !(Math.abs(turned) >= LEAST_ON_ONE_TACK)) {
            return null;
        }
        return Math.abs(after) > Math.abs(before) ? TurnKind.BEAR_AWAY : TurnKind.ROUND_UP;
    }

    /** Way of the bow from just before the sweep to just after it (rad). */
    private double way(Span sweep) {
        double way = 0;
        for (int i = Math.max(1, sweep.from()); i <= Math.min(sweep.to(), track.size() - 1); i++) {
            way += Angles.difference(courses.heading[i], courses.heading[i - 1]);
        }
        return way;
    }

    private double mean(int from, int to) {
        int begin = Math.max(0, from);
        int end = Math.min(track.size(), to);
        return begin < end ? Circular.mean(courses.windAngle, begin, end) : Double.NaN;
    }
}
