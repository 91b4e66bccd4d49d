package trimwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.units.Angles;
import trimwright.units.Circular;
import trimwright.wind.WindTrack;

/**
 * Finds turns: between two held courses lies a stretch in which none is held; where tack or point of sail differ before
 * and after, it is a turn. It begins when the heading leaves the mean of the course before by 5 deg and ends when the
 * new one is held within 4 deg for 4 s. A change that comes from the wind while the course is held is no turn; neither
 * is a circle, nor coming back to where it began.
 */
final class TurnFinder {
    private static final double LEAVES_BY = Math.toRadians(5);

    /** The steady mean is that of up to this time before (s), chosen. */
    private static final double STEADY_FOR = 10.0;

    /** The last of the held course (s) is left out of that mean where it can be: the turn has begun in it (chosen). */
    private static final double BEGINNING = 1.0;

    /** A turn of less is steering (chosen). */
    private static final double LEAST_ANGLE = Math.toRadians(10);

    /** A turn of more is a circle, and one that takes longer is manoeuvring (chosen). */
    private static final double GREATEST_ANGLE = Math.toRadians(240);

    private static final double LONGEST = 60.0;

    private final WindTrack track;
    private final Courses courses;

    private TurnFinder(WindTrack track, Courses courses) {
        this.track = track;
        this.courses = courses;
    }

    static List<Turn> find(WindTrack track, Courses courses) {
        return new TurnFinder(track, courses).find();
    }

    private record Found(TurnKind kind, Span span, Span before, double angle) {}

    private List<Turn> find() {
        List<Found> found = new ArrayList<>();
        int i = 0;
        while (i < track.size()) {
            int from = i;
            boolean held = courses.held[i];
            while (i < track.size() && courses.held[i] == held) {
                i++;
            }
            if (!held && from > 0 && i < track.size()) {
                Found turn = between(from, i);
                if (turn != null) {
                    found.add(turn);
                }
            }
        }
        List<Turn> turns = new ArrayList<>();
        for (int k = 0; k < found.size(); k++) {
            Found turn = found.get(k);
            int next = k + 1 < found.size() ? found.get(k + 1).span().from() : track.size();
            turns.add(TurnFigures.of(track, turn.kind(), turn.span(), turn.before(), turn.angle(), next));
        }
        return turns;
    }

    /** The turn in the stretch {@code [from, to)} without a held course, or null. */
    private @Nullable Found between(int from, int to) {
        int steady = from - 1;
        int earliest = Math.max(0, from - track.clock().steps(STEADY_FOR));
        while (steady > earliest && courses.held[steady - 1]) {
            steady--;
        }
        Span before = new Span(steady, Math.max(steady + 1, from - track.clock().steps(BEGINNING)));
        double mean = Circular.mean(courses.heading, before.from(), before.to());
        int leaves = steady;
        while (leaves < to && !(Math.abs(Angles.difference(courses.heading[leaves], mean)) > LEAVES_BY)) {
            leaves++;
        }
        if (leaves >= to || (to - leaves) * track.clock().step() > LONGEST) {
            return null;
        }
        Span span = new Span(leaves, to);
        int holding = Math.min(track.size(), to + track.clock().steps(Courses.HELD_FOR));
        double angle = courses.way(before, new Span(to, holding));
        TurnKind kind = kindOf(
                Circular.mean(courses.windAngle, before.from(), before.to()),
                Circular.mean(courses.windAngle, to, holding),
                angle);
        return kind == null ? null : new Found(kind, span, before, angle);
    }

    /** By what the wind did as seen from the boat; null where it is no turn. */
    private static @Nullable TurnKind kindOf(double before, double after, double turned) {
        if (Double.isNaN(before)
                || Double.isNaN(after)
                || Double.isNaN(turned)
                || Math.abs(turned) < LEAST_ANGLE
                || Math.abs(turned) > GREATEST_ANGLE) {
            return null;
        }
        if (Tack.of(before) != Tack.of(after)) {
            // The wind angle followed without wrapping: it stays within pi where the bow passed through the wind.
            return Math.abs(before - turned) <= Math.PI ? TurnKind.TACK : TurnKind.GYBE;
        }
        if (PointOfSail.of(before) == PointOfSail.of(after)) {
            return null;
        }
        return Math.abs(after) > Math.abs(before) ? TurnKind.BEAR_AWAY : TurnKind.ROUND_UP;
    }
}
