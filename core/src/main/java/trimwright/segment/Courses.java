package trimwright.segment;

import trimwright.units.Angles;
import trimwright.units.Circular;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * Heading free of jitter, wind angle from it, and at each instant the tack and the point of sail.
 */
final class Courses {
    /** Heading is averaged over this time to either side (s), chosen: compass noise, not steering. */
    private static final double HEADING_WINDOW = 0.5;

    /** A new course is reached where the heading is this near to it (rad). */
    static final double HELD_WITHIN = Math.toRadians(4);

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

    private Courses(WindTrack track) {
        int n = track.size();
        heading = Circular.smooth(track.toArray(Quantity.HEADING), track.clock().steps(HEADING_WINDOW));
        windAngle = new double[n];
        tack = new Tack[n];
        pointOfSail = new PointOfSail[n];
        states(track);
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
}
