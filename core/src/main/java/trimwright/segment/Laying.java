package trimwright.segment;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.course.PlanePoint;
import trimwright.units.Angles;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * Tells where a boat makes straight for the place at which it ends its leg. There the mark says what is steered, not the
 * best angle, and off that angle it is straight sailing all the same.
 */
final class Laying {
    /** The course is this near to the way to the leg's end (rad), chosen: leeway and steering. */
    private static final double NEAR = Math.toRadians(10);

    /** The last straight stretch ends no sooner before the leg's end (s), chosen: the longest rounding that begins before it. */
    private static final double ROUNDING = 15;

    private final WindTrack track;
    private final BowTrack bow;
    private final Span last;
    private final PlanePoint end;

    private Laying(WindTrack track, BowTrack bow, Span last, PlanePoint end) {
        this.track = track;
        this.bow = bow;
        this.last = last;
        this.end = end;
    }

    /**
     * On a leg's last stretch.
     *
     * @param stretches straight ones of the leg, in order
     * @return null where the leg was not ended or its last part is not known
     */
    static @Nullable Laying of(WindTrack track, OnCourse on, Leg leg, List<Span> stretches) {
        boolean isEnded = on.sailed().legs().stream()
                .anyMatch(sailed -> sailed.isEnded() && sailed.span().equals(leg.span()));
        if (!isEnded || stretches.isEmpty()) {
            return null;
        }
        Span last = stretches.get(stretches.size() - 1);
        if (leg.span().to() - last.to() > track.clock().steps(ROUNDING)) {
            return null;
        }
        for (int i = Math.min(leg.span().to(), track.size() - 1); i > last.from(); i--) {
            PlanePoint end = on.bow().at(i);
            if (end != null) {
                return new Laying(track, on.bow(), last, end);
            }
        }
        return null;
    }

    /** Whether the boat makes for the leg's end at that instant. */
    boolean isOnItsWay(int i) {
        PlanePoint here = bow.at(i);
        return last.contains(i)
                && here != null
                && Math.abs(Angles.difference(here.bearingTo(end), track.get(Quantity.COURSE, i))) < NEAR;
    }
}
