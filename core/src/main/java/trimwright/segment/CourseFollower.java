package trimwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.course.CourseGeometry;
import trimwright.course.PlaneLine;
import trimwright.course.PlanePoint;
import trimwright.wind.Quantity;
import trimwright.wind.SessionClock;
import trimwright.wind.WindTrack;

/**
 * Follows a boat round its course: the bow's crossings of the start line, of the lines that end the legs, of the finish,
 * each in its sense and in their order. A gap in the positions is bridged by the straight way across it.
 */
public final class CourseFollower {
    /** A receiver's position may be off by this (m), chosen: two or three times a good one's error within a race. */
    private static final double RECEIVER = 2;

    private final WindTrack track;
    private final BowTrack bow;
    private final CourseGeometry course;

    private CourseFollower(WindTrack track, BowTrack bow, CourseGeometry course) {
        this.track = track;
        this.bow = bow;
        this.course = course;
    }

    /** @param gunNanos start signal (ns since 1970, UTC) */
    public static SailedCourse of(WindTrack track, BowTrack bow, CourseGeometry course, long gunNanos) {
        return new CourseFollower(track, bow, course).follow(gunNanos);
    }

    /**
     * A crossing.
     *
     * @param after first instant with the bow beyond the line
     * @param instant when the bow was on it, in instants and parts of one
     * @param place where
     */
    private record Crossing(int after, double instant, PlanePoint place) {}

    private SailedCourse follow(long gunNanos) {
        SessionClock clock = track.clock();
        long steps = Math.floorDiv(gunNanos - clock.startNanos(), clock.stepNanos());
        if (steps >= track.size()) {
            return new SailedCourse(null, List.of());
        }
        int gun = (int) Math.max(0, steps);
        Crossing crossing = find(course.start(), gun);
        Crossing firstEnd = find(course.endOfLeg(0), gun);
        PlanePoint atGun = bow.at(gun);
        double ahead = atGun == null ? Double.NaN : course.start().ahead(atGun);
        boolean early = ahead > 0 && find(course.start(), Math.max(0, gun - clock.steps(60)), gun) != null;
        boolean stayedOver = early && (crossing == null || firstEnd != null && firstEnd.after < crossing.after);
        if (!stayedOver && crossing == null) {
            return new SailedCourse(null, List.of());
        }
        double crossed = stayedOver || crossing == null ? gun : crossing.instant;
        PlanePoint place = stayedOver || crossing == null ? atGun : crossing.place;
        SailedCourse.Start start = steps < 0 || place == null
                ? null
                : new SailedCourse.Start(
                        gun,
                        stayedOver ? 0 : crossed * clock.step() - (gunNanos - clock.startNanos()) / 1e9,
                        early,
                        -ahead,
                        track.mean(Quantity.SPEED, gun, Math.min(track.size(), gun + clock.steps(1))),
                        share(place));
        return new SailedCourse(start, legs((int) Math.ceil(crossed)));
    }

    private List<SailedCourse.SailedLeg> legs(int started) {
        List<SailedCourse.SailedLeg> legs = new ArrayList<>();
        int from = started;
        for (int leg = 0; leg < course.legCount() && from < track.size(); leg++) {
            boolean isFinish = leg == course.legCount() - 1;
            Crossing end = isFinish ? find(course.endOfLeg(leg), from) : findNear(course.endOfLeg(leg), from);
            int to = end == null ? track.size() : Math.max(from + 1, end.after);
            legs.add(new SailedCourse.SailedLeg(course.leg(leg), new Span(from, to), end != null));
            if (end == null) {
                break;
            }
            from = to;
        }
        return legs;
    }

    /**
     * As {@link #find}, but a bow that comes within the error of a receiver of the line counts too, at its nearest: boats
     * turn on the line of a gate and hardly cross it.
     */
    private @Nullable Crossing findNear(PlaneLine line, int from) {
        int nearest = -1;
        double most = -RECEIVER;
        Crossing crossing = find(line, from);
        int last = crossing == null ? track.size() : crossing.after;
        for (int i = from; i < last; i++) {
            PlanePoint here = bow.at(i);
            double ahead = here == null ? Double.NaN : line.ahead(here);
            if (here != null && ahead >= most && ahead <= 0 && line.isBeside(here)) {
                most = ahead;
                nearest = i;
            } else if (nearest >= 0 && ahead < -RECEIVER) {
                // Gone again: she was there.
                return new Crossing(nearest, nearest, getPlace(nearest));
            }
        }
        return crossing;
    }

    private PlanePoint getPlace(int i) {
        PlanePoint place = bow.at(i);
        if (place == null) {
            throw new IllegalStateException("no position at instant " + i);
        }
        return place;
    }

    private @Nullable Crossing find(PlaneLine line, int from) {
        return find(line, from, track.size());
    }

    private @Nullable Crossing find(PlaneLine line, int from, int to) {
        int before = -1;
        for (int i = from; i < to; i++) {
            PlanePoint here = bow.at(i);
            if (here == null) {
                continue;
            }
            PlanePoint last = before < 0 ? null : bow.at(before);
            double share = last == null ? Double.NaN : line.crossedAt(last, here);
            if (last != null && !Double.isNaN(share)) {
                PlanePoint place =
                        last.plus(share * (here.north() - last.north()), share * (here.east() - last.east()));
                return new Crossing(i, before + share * (i - before), place);
            }
            before = i;
        }
        return null;
    }

    private double share(PlanePoint place) {
        PlanePoint port = course.start().portEnd();
        PlanePoint starboard = course.start().starboardEnd();
        double north = starboard.north() - port.north();
        double east = starboard.east() - port.east();
        return ((place.north() - port.north()) * north + (place.east() - port.east()) * east)
                / (north * north + east * east);
    }
}
