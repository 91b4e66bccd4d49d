package trimwright.segment;

import org.jspecify.annotations.Nullable;
import trimwright.course.PlanePoint;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * Says why turns were made. In this order: a mark, if a leg ended in the first half of the turn or within 8 s before it; the
 * boundary, if the boat would have come to it within 9 s of the turn's begin; traffic, if within 10 s of it another boat of
 * which this one had to keep clear, both held on, would have come nearer than 25 m and nearer than it was; else free. All
 * numbers are chosen: a turn takes some 5 s, in which a boat moves on half of its way. Turns outside all legs get no label.
 */
final class TurnLabels {
    private static final double AT_MARK = 8;
    private static final double TO_BOUNDARY = 9;
    private static final double LOOK_AHEAD = 10;
    private static final double NEAR = 25;

    private final WindTrack track;
    private final OnCourse on;

    TurnLabels(WindTrack track, OnCourse on) {
        this.track = track;
        this.on = on;
    }

    Turn label(Turn turn) {
        int from = turn.span().from();
        boolean inLeg = on.sailed().legs().stream().anyMatch(leg -> leg.span().overlaps(turn.span()));
        if (!inLeg) {
            return turn;
        }
        if (isAtMark(turn.span())) {
            return turn.with(TurnLabel.MARK);
        }
        if (isAtBoundary(from)) {
            return turn.with(TurnLabel.BOUNDARY);
        }
        return turn.with(isInTheWay(from) ? TurnLabel.TRAFFIC : TurnLabel.FREE);
    }

    /** A turn that is half done when the leg ends was made to reach the mark, not to round it. */
    private boolean isAtMark(Span turn) {
        int near = track.clock().steps(AT_MARK);
        int middle = turn.from() + turn.length() / 2;
        for (SailedCourse.SailedLeg leg : on.sailed().legs()) {
            int end = leg.span().to();
            if (leg.isEnded() && end >= turn.from() - near && end <= middle) {
                return true;
            }
        }
        return false;
    }

    private boolean isAtBoundary(int i) {
        PlanePoint bow = on.bow().at(i);
        double speed = track.get(Quantity.SPEED, i);
        double course = track.get(Quantity.COURSE, i);
        return bow != null && on.course().distanceToBoundary(bow, course) < speed * TO_BOUNDARY;
    }

    private boolean isInTheWay(int i) {
        PlanePoint own = on.bow().at(i);
        if (own == null) {
            return false;
        }
        for (OnCourse.Neighbour other : on.others()) {
            PlanePoint theirs = other.bow().at(i);
            if (theirs != null
                    && comesNear(i, own, other.track(), theirs)
                    && keepsClear(i, own, other.track(), theirs)) {
                return true;
            }
        }
        return false;
    }

    /**
     * Whether this boat has to keep clear: with the wind from port, of one that has it from starboard; on the same tack, to
     * windward of the other or coming up from astern (COLREGS, rules 12 and 13).
     */
    private boolean keepsClear(int i, PlanePoint own, WindTrack other, PlanePoint theirs) {
        Tack tack = Tack.of(track.get(Quantity.TWA, i));
        if (tack != Tack.of(other.get(Quantity.TWA, i))) {
            return tack == Tack.PORT;
        }
        double bearing = own.bearingTo(theirs);
        boolean isAhead = StrictMath.cos(bearing - track.get(Quantity.COURSE, i)) > 0;
        boolean isToLeeward = StrictMath.cos(bearing - track.get(Quantity.TWD, i)) < 0;
        return isAhead || isToLeeward;
    }

    private boolean comesNear(int i, PlanePoint own, WindTrack other, PlanePoint theirs) {
        double @Nullable [] mine = velocity(track, i);
        double @Nullable [] their = velocity(other, i);
        if (mine == null || their == null) {
            return false;
        }
        double north = theirs.north() - own.north();
        double east = theirs.east() - own.east();
        double closingNorth = their[0] - mine[0];
        double closingEast = their[1] - mine[1];
        double square = closingNorth * closingNorth + closingEast * closingEast;
        double nearest = square == 0 ? 0 : -(north * closingNorth + east * closingEast) / square;
        double when = Math.max(0, Math.min(LOOK_AHEAD, nearest));
        double distance = StrictMath.hypot(north + when * closingNorth, east + when * closingEast);
        return when > 0 && distance < NEAR;
    }

    private static double @Nullable [] velocity(WindTrack boat, int i) {
        double speed = boat.get(Quantity.SPEED, i);
        double course = boat.get(Quantity.COURSE, i);
        return Double.isNaN(speed) || Double.isNaN(course)
                ? null
                : new double[] {speed * StrictMath.cos(course), speed * StrictMath.sin(course)};
    }
}
