package trimwright.segment;

import org.jspecify.annotations.Nullable;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/** What is told about a turn once its ends are known. */
final class TurnFigures {
    private static final double SPEED_WINDOW = 3.0;

    /** VMG counts as back at this share of that before the turn, as a mean over {@link #BACK_FOR} (chosen). */
    private static final double BACK = 0.95;

    private static final double BACK_FOR = 2.0;

    /** The account is closed this long after the turn's end (s), chosen. */
    private static final double CLOSED_AFTER = 30.0;

    private TurnFigures() {}

    static Turn of(WindTrack track, TurnKind kind, Span span, Span before, double angle, int nextTurn) {
        int window = track.clock().steps(SPEED_WINDOW);
        double greatest = 0;
        double least = Double.NaN;
        for (int i = span.from(); i < span.to(); i++) {
            greatest = Math.max(greatest, orZero(Math.abs(track.get(Quantity.RATE_OF_TURN, i))));
            double speed = track.get(Quantity.SPEED, i);
            least = Double.isNaN(least) || speed < least ? speed : least;
        }
        return new Turn(
                kind,
                span,
                Tack.of(track.mean(Quantity.TWA, before.from(), before.to())),
                track.mean(Quantity.SPEED, Math.max(before.from(), before.to() - window), before.to()),
                track.mean(Quantity.SPEED, span.to() - 1, Math.min(track.size(), span.to() + window)),
                least,
                new Turn.Rates(angle, angle / (span.length() * track.clock().step()), greatest),
                null,
                kind.changesTack() ? recovery(track, span, before, nextTurn) : null);
    }

    private static Turn.@Nullable Recovery recovery(WindTrack track, Span span, Span before, int nextTurn) {
        double direction = track.mean(Quantity.TWD, before.from(), before.to());
        double angle = track.mean(Quantity.TWA, before.from(), before.to());
        int sign = Math.abs(angle) < Math.PI / 2 ? 1 : -1;
        double entry = meanGood(track, direction, before.from(), before.to()) * sign;
        if (!(entry > 0)) {
            return null;
        }
        double step = track.clock().step();
        int back = track.clock().steps(BACK_FOR);
        int close = Math.min(
                Math.min(track.size(), nextTurn), span.to() + track.clock().steps(CLOSED_AFTER));
        int until = span.to();
        while (until < close
                && !(meanGood(track, direction, until, Math.min(track.size(), until + back)) * sign >= BACK * entry)) {
            until++;
        }
        double lost = 0;
        for (int i = span.from(); i < until; i++) {
            double made = good(track, direction, i) * sign;
            if (Double.isNaN(made)) {
                return null;
            }
            lost += (entry - made) * step;
        }
        return new Turn.Recovery(until, lost, until < close);
    }

    private static double meanGood(WindTrack track, double direction, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += good(track, direction, i);
        }
        return sum / (to - from);
    }

    /** Speed towards where the wind came from before the turn. */
    private static double good(WindTrack track, double direction, int i) {
        return track.get(Quantity.SPEED, i) * StrictMath.cos(direction - track.get(Quantity.COURSE, i));
    }

    private static double orZero(double value) {
        return Double.isNaN(value) ? 0 : value;
    }
}
