package trimwright.segment;

import java.util.ArrayList;
import java.util.List;
import trimwright.units.Angles;
import trimwright.units.Units;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/** Finds spans of one point of sail; short departures, such as building speed out of a tack, do not end one. */
final class LegFinder {
    private static final double SHORTEST = 60.0;

    /** A departure, or a gap, shorter than this stays in the leg (s), chosen. */
    private static final double DEPARTURE = 10.0;

    /** Slower than this on average (m/s) a boat lies or drifts and sails no leg (chosen). */
    private static final double SAILING = 1.0;

    /** Nearer to the wind than this (rad), over half of the time, a boat is under engine or lies to (chosen). */
    static final double NO_GO = Units.fromDegrees(20);

    private LegFinder() {}

    static List<Leg> find(WindTrack track, Courses courses) {
        int departure = track.clock().steps(DEPARTURE);
        List<Leg> legs = new ArrayList<>();
        int i = 0;
        while (i < track.size()) {
            PointOfSail on = courses.pointOfSail[i];
            if (on == null) {
                i++;
                continue;
            }
            int last = i;
            for (int k = i; k < track.size() && k - last <= departure; k++) {
                last = courses.pointOfSail[k] == on ? k : last;
            }
            Span span = new Span(i, last + 1);
            if (span.length() * track.clock().step() >= SHORTEST
                    && track.mean(Quantity.SPEED, span.from(), span.to()) > SAILING
                    && sails(courses, span)) {
                legs.add(leg(track, on, span));
                i = span.to();
            } else {
                // Not a leg: go on behind the first run of this class, a longer span may begin there.
                while (i < track.size() && courses.pointOfSail[i] == on) {
                    i++;
                }
            }
        }
        return legs;
    }

    private static boolean sails(Courses courses, Span span) {
        int sailing = 0;
        for (int i = span.from(); i < span.to(); i++) {
            sailing += Math.abs(courses.windAngle[i]) > NO_GO ? 1 : 0;
        }
        return sailing > span.length() / 2;
    }

    private static Leg leg(WindTrack track, PointOfSail on, Span span) {
        double north = 0;
        double east = 0;
        for (int i = span.from(); i < span.to(); i++) {
            double speed = track.get(Quantity.SPEED, i);
            double course = track.get(Quantity.COURSE, i);
            if (!Double.isNaN(speed) && !Double.isNaN(course)) {
                north += speed * StrictMath.cos(course) * track.clock().step();
                east += speed * StrictMath.sin(course) * track.clock().step();
            }
        }
        return new Leg(on, span, Angles.compass(StrictMath.atan2(east, north)), StrictMath.hypot(north, east), null);
    }
}
