package trimwright.segment;

import java.util.Arrays;
import trimwright.units.Angles;
import trimwright.units.Circular;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * Heading free of jitter, wind angle from it, and at each instant the tack, the point of sail, and whether the course is
 * held.
 */
final class Courses {
    /** Heading is averaged over this time to either side (s), chosen: compass noise, not steering. */
    private static final double HEADING_WINDOW = 0.5;

    /** A course is held where the heading stays this near to its mean over this time. */
    static final double HELD_WITHIN = Math.toRadians(4);

    static final double HELD_FOR = 4.0;

    /** A tack is another only when the wind is this far across (rad), chosen: pinching and dead running waver. */
    private static final double ACROSS = Math.toRadians(8);

    /** In [0, 2 pi). */
    final double[] heading;
    /** Smoothed wind from that heading, in (-pi, pi]. */
    final double[] windAngle;
    /** Null where the wind is not known. */
    final Tack[] tack;
    /** Null where the wind is not known. */
    final PointOfSail[] pointOfSail;
    /** Whether the instant lies in any window of 4 s that holds its course. */
    final boolean[] held;

    private Courses(WindTrack track) {
        int n = track.size();
        heading = Circular.smooth(track.toArray(Quantity.HEADING), track.clock().steps(HEADING_WINDOW));
        windAngle = new double[n];
        tack = new Tack[n];
        pointOfSail = new PointOfSail[n];
        held = new boolean[n];
        states(track);
        holds(track.clock().steps(HELD_FOR));
    }

    static Courses of(WindTrack track) {
        return new Courses(track);
    }

    private void states(WindTrack track) {
        Tack onTack = null;
        PointOfSail on = null;
        for (int i = 0; i < windAngle.length; i++) {
            double angle = Angles.difference(track.get(Quantity.TWD, i), heading[i]);
            windAngle[i] = angle;
            if (Double.isNaN(angle)) {
                onTack = null;
                on = null;
                continue;
            }
            boolean clear = Math.abs(angle) > ACROSS && Math.abs(angle) < Math.PI - ACROSS;
            onTack = onTack == null || clear ? Tack.of(angle) : onTack;
            on = on == null ? PointOfSail.of(angle) : on.next(angle);
            tack[i] = onTack;
            pointOfSail[i] = on;
        }
    }

    private void holds(int window) {
        for (int i = 0; i + window < heading.length; i++) {
            if (isHeld(i, i + window + 1)) {
                Arrays.fill(held, i, i + window + 1, true);
            }
        }
    }

    private boolean isHeld(int from, int to) {
        double mean = Circular.mean(heading, from, to);
        for (int i = from; i < to; i++) {
            // A missing heading is not a held one: NaN fails the comparison.
            if (!(Math.abs(Angles.difference(heading[i], mean)) <= HELD_WITHIN)) {
                return false;
            }
        }
        return true;
    }

    /** From the mean heading of one span to that of a later one (rad), following the bow round; NaN over a gap. */
    double way(Span before, Span after) {
        double way = Angles.difference(heading[before.to()], Circular.mean(heading, before.from(), before.to()));
        for (int i = before.to() + 1; i <= after.from(); i++) {
            way += Angles.difference(heading[i], heading[i - 1]);
        }
        return way + Angles.difference(Circular.mean(heading, after.from(), after.to()), heading[after.from()]);
    }
}
