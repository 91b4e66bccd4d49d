package trimwright.segment;

import org.jspecify.annotations.Nullable;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * When, in a turn, what was on one side came to the other: the apparent wind, over bow or stern, and the camber with it. The instant is
 * the one that leaves the fewest readings on the wrong side, so that noise about zero does not count.
 *
 * @param wind instant of the session's clock at which the apparent wind is first on the new side
 * @param over where it came over
 * @param camber instant at which the camber is first on the new side; null without camber, or where it did not go over
 */
public record SideChange(int wind, Over over, @Nullable Integer camber) {
    /** Where the apparent wind came over. */
    public enum Over {
        BOW,
        STERN
    }

    /** Looked for from this much before the turn to this much after it (s), chosen: camber goes over late or early. */
    private static final double BEFORE = 3;

    private static final double AFTER = 6;

    /** Share of readings that must be known (-), chosen. */
    private static final double KNOWN = 0.5;

    /** Share of readings on the wrong side from which nothing came over (-), chosen. */
    private static final double WRONG = 0.2;

    /** In a turn that changes the tack; null in another, or where the wind was not read. */
    public static @Nullable SideChange of(WindTrack track, Turn turn) {
        if (!turn.kind().changesTack() || !track.has(Quantity.AWA)) {
            return null;
        }
        int from = Math.max(0, turn.span().from() - track.clock().steps(BEFORE));
        int to = Math.min(track.size(), turn.span().to() + track.clock().steps(AFTER));
        int side = turn.entryTack().sign();
        int wind = change(track, Quantity.AWA, from, to, side);
        if (wind < 0) {
            return null;
        }
        int camber = track.has(Quantity.CAMBER) ? change(track, Quantity.CAMBER, from, to, side) : -1;
        return new SideChange(wind, over(track, wind), camber < 0 ? null : camber);
    }

    private static Over over(WindTrack track, int wind) {
        double angle = track.mean(Quantity.AWA, Math.max(0, wind - 1), Math.min(track.size(), wind + 1));
        double before = track.get(Quantity.AWA, Math.max(0, wind - 1));
        double nearest = Double.isNaN(before) ? Math.abs(angle) : Math.abs(before);
        return nearest > Math.PI / 2 ? Over.STERN : Over.BOW;
    }

    /** -1 where too little is known, or nothing came over. */
    private static int change(WindTrack track, Quantity quantity, int from, int to, int side) {
        int known = 0;
        int wrong = 0;
        for (int i = from; i < to; i++) {
            double value = track.get(quantity, i) * side;
            known += Double.isNaN(value) ? 0 : 1;
            wrong += value > 0 ? 1 : 0;
        }
        if (known < KNOWN * (to - from)) {
            return -1;
        }
        // Begun with the change before everything: all that are still on the old side are wrong.
        int best = from;
        int least = wrong;
        for (int i = from; i < to; i++) {
            double value = track.get(quantity, i) * side;
            wrong += Double.isNaN(value) ? 0 : value > 0 ? -1 : 1;
            if (wrong < least) {
                least = wrong;
                best = i + 1;
            }
        }
        return least > WRONG * known || best == from || best >= to ? -1 : best;
    }
}
