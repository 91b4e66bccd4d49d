package trimwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.units.Angles;
import trimwright.units.Circular;
import trimwright.wind.WindTrack;

/**
 * Finds turns: a sweep of the bow is one, where tack or point of sail differ before and after. Two turns in one sweep, as a
 * bear-away and a gybe at a mark, part where the bow slows down between them. A change that comes from the wind while the
 * course is held is no turn; neither is a circle, nor coming back to where it began, nor steering slowly or a little to
 * gather speed.
 */
final class TurnFinder {
    private static final double LEAVES_BY = Math.toRadians(5);

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

    /** On one tack a turn that is never faster is steering (rad/s), chosen: twice what ends a phase. */
    private static final double FAST_ON_ONE_TACK = Math.toRadians(6);

    /** A turn of more is a circle, and one that takes longer is manoeuvring (chosen). */
    private static final double GREATEST_ANGLE = Math.toRadians(240);

    private static final double LONGEST = 60.0;

    private final WindTrack track;
    private final Courses courses;
    private final Sweeps sweeps;

    private TurnFinder(WindTrack track, Courses courses) {
        this.track = track;
        this.courses = courses;
        this.sweeps = new Sweeps(courses, track.clock());
    }

    static List<Turn> find(WindTrack track, Courses courses) {
        return new TurnFinder(track, courses).find();
    }

    private record Found(TurnKind kind, Span span, double angle) {}

    private List<Turn> find() {
        List<Found> found = new ArrayList<>();
        int beside = track.clock().steps(BESIDE);
        for (Span sweep : sweeps.all()) {
            double before = mean(sweep.from() - beside, sweep.from());
            double after = mean(sweep.to(), sweep.to() + beside);
            found.addAll(turnsOf(sweep, before, after));
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

    /**
     * The turns of a sweep: parted at its slowest dip between two kinds of turn, as often as there is one.
     *
     * @param before wind angle before it (rad), NaN where not known
     * @param after wind angle after it
     */
    private List<Found> turnsOf(Span sweep, double before, double after) {
        int parts = -1;
        for (int dip : sweeps.dips(sweep)) {
            if ((parts < 0 || sweeps.rate(dip) < sweeps.rate(parts)) && partsTurns(sweep, dip, before, after)) {
                parts = dip;
            }
        }
        if (parts >= 0) {
            double between = courses.windAngle[parts];
            List<Found> both = new ArrayList<>(turnsOf(new Span(sweep.from(), parts), before, between));
            both.addAll(turnsOf(new Span(parts, sweep.to()), between, after));
            return both;
        }
        TurnKind kind = kind(sweep, before, after);
        return kind == null ? List.of() : List.of(new Found(kind, ends(sweeps.main(sweep)), sweeps.way(sweep)));
    }

    /** Whether what lies before and after that instant are turns of two kinds. */
    private boolean partsTurns(Span sweep, int instant, double before, double after) {
        double between = courses.windAngle[instant];
        TurnKind first = kind(new Span(sweep.from(), instant), before, between);
        TurnKind second = kind(new Span(instant, sweep.to()), between, after);
        return first != null && second != null && first != second;
    }

    private @Nullable TurnKind kind(Span sweep, double before, double after) {
        double angle = sweeps.way(sweep);
        if (Double.isNaN(before)
                || Double.isNaN(after)
                || !(Math.abs(angle) >= LEAST_ANGLE && Math.abs(angle) <= GREATEST_ANGLE)
                || sweep.length() * track.clock().step() > LONGEST) {
            return null;
        }
        return Tack.of(before) == Tack.of(after)
                ? onOneTack(sweep, before, after, angle)
                : acrossTheWind(before, angle);
    }

    /** The wind angle followed without wrapping stays within pi where the bow passes through the wind. */
    private static TurnKind acrossTheWind(double before, double turned) {
        return Math.abs(before - turned) <= Math.PI ? TurnKind.TACK : TurnKind.GYBE;
    }

    private @Nullable TurnKind onOneTack(Span sweep, double before, double after, double turned) {
        if (PointOfSail.of(before) == PointOfSail.of(after)
                || !(Math.abs(turned) >= LEAST_ON_ONE_TACK)
                || sweeps.greatestRate(sweep) < FAST_ON_ONE_TACK) {
            return null;
        }
        return Math.abs(after) > Math.abs(before) ? TurnKind.BEAR_AWAY : TurnKind.ROUND_UP;
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

    private double mean(int from, int to) {
        int begin = Math.max(0, from);
        int end = Math.min(track.size(), to);
        return begin < end ? Circular.mean(courses.windAngle, begin, end) : Double.NaN;
    }
}
