package trimwright.crew;

import trimwright.course.CourseGeometry;
import trimwright.course.PlanePoint;
import trimwright.motion.Controls;
import trimwright.units.Angles;

/**
 * Decides how to sail the leg: which tack, when to turn for a lay line, a shift or the boundary. Looks a few times a second.
 * Times and distances are chosen.
 */
final class Tactician {
    /** Time that a turn takes until the boat moves away from the boundary (s). */
    private static final double TURN_TIME = 6.5;

    /** Rate at which the second board goes down (1/s). */
    private static final double BOARD_RATE = 0.25;
    /** Near the mark a boat sails closer and lower than her best angles to fetch it (m, rad): chosen. */
    private static final double NEAR = 160;

    private static final double PINCH = Math.toRadians(7);
    private static final double SOAK = Math.toRadians(18);

    /** Way against the wind in a turn and until speed is back, what is lost on wider angles taken off (m). */
    private static final double TACK_WAY = 30;

    private static final double GYBE_WAY = -60;

    private static final double BOUNDARY_MARGIN = 30;
    private static final double REST = 40;
    private static final double SHORT_REST = 12;
    private static final double FAR = 350;
    /** Time over which the mean direction is kept in mind (s). */
    private static final double MEMORY = 150;

    private static final double HYSTERESIS = Math.toRadians(4);

    private final CourseGeometry course;
    private final SailingAims aims;
    private final Temper temper;
    private final Turning turning;
    private Plan plan;
    private double meanNorth;
    private double meanEast;
    private double lastTurn = -1000;
    private double lastLook = Double.NaN;

    Tactician(CourseGeometry course, SailingAims aims, Temper temper, Turning turning, int tack) {
        this.course = course;
        this.aims = aims;
        this.temper = temper;
        this.turning = turning;
        plan = new Plan(Plan.Sail.DIRECT, tack, 0, TurnCause.FREE);
    }

    /** One that goes on from here, its turns made in that way. */
    Tactician copy(Turning made) {
        Tactician other = new Tactician(course, aims, temper, made, plan.tack());
        other.plan = plan;
        other.meanNorth = meanNorth;
        other.meanEast = meanEast;
        other.lastTurn = lastTurn;
        other.lastLook = lastLook;
        return other;
    }

    Plan plan() {
        return plan;
    }

    /** The driver has ended a turn. */
    void turned(double time) {
        lastTurn = time;
    }

    void look(Sight sight, PlanePoint bow, PlanePoint target) {
        remember(sight);
        double upwind = aims.upwindAngle(sight.windSpeed());
        double downwind = aims.downwindAngle(sight.windSpeed());
        int tack = plan.tack();
        PlanePoint soon = turning == Turning.AT_ONCE ? bow : afterTurn(sight, bow);
        double straight = Angles.signed(sight.windFrom() - bow.bearingTo(target));
        double then = Angles.signed(sight.windFrom() - soon.bearingTo(target));
        boolean near = bow.distanceTo(target) < NEAR;
        Plan.Sail sail = sail(straight, upwind - (near ? PINCH : 0), downwind + (near ? SOAK : 0));
        if (sail == Plan.Sail.DIRECT) {
            plan = new Plan(sail, straight >= 0 ? 1 : -1, bow.bearingTo(target), TurnCause.FREE);
            return;
        }
        double rest = sight.time() - lastTurn;
        double edge = course.distanceToBoundary(bow, sight.course());
        if (edge < sight.speed() * TURN_TIME + BOUNDARY_MARGIN && rest > 3) {
            plan = new Plan(sail, -tack, 0, TurnCause.BOUNDARY);
            return;
        }
        boolean otherTackLays = sail == Plan.Sail.UPWIND
                ? -tack * then > upwind + temper.overstand() && -tack * then < Math.PI / 2
                : -tack * then > Math.PI / 2 && -tack * then < downwind - temper.overstand();
        if (otherTackLays && rest > SHORT_REST) {
            plan = new Plan(sail, -tack, 0, TurnCause.FREE);
            return;
        }
        double lift = tack * Angles.difference(sight.windFrom(), StrictMath.atan2(meanEast, meanNorth));
        boolean wrongTack = sail == Plan.Sail.UPWIND ? lift < -temper.shift() : lift > temper.shift();
        double way = bow.distanceTo(target);
        if (wrongTack && rest > REST && way > FAR && edge > FAR) {
            plan = new Plan(sail, -tack, 0, TurnCause.FREE);
            return;
        }
        plan = new Plan(sail, tack, 0, plan.cause());
    }

    /** Where the boat will be when a turn ordered now has taken her round and she has gathered speed again. */
    private PlanePoint afterTurn(Sight sight, PlanePoint bow) {
        double ahead = untilHelm(sight) * sight.speed();
        double upwindWay = plan.sail() == Plan.Sail.DOWNWIND ? GYBE_WAY : TACK_WAY;
        return bow.plus(
                ahead * StrictMath.cos(sight.course()) + upwindWay * StrictMath.cos(sight.windFrom()),
                ahead * StrictMath.sin(sight.course()) + upwindWay * StrictMath.sin(sight.windFrom()));
    }

    /** Time from an order until the second board is down and the helm goes over (s). */
    private double untilHelm(Sight sight) {
        Controls controls = sight.state().controls();
        double down = Math.min(controls.portBoard(), controls.starboardBoard());
        TurnKind kind = plan.sail() == Plan.Sail.DOWNWIND ? TurnKind.GYBE : TurnKind.TACK;
        return 0.3 + Math.max(0, Turns.boardNeeded(kind) - down) / BOARD_RATE;
    }

    /** Straight at the mark where its angle allows, with some reluctance to change one's mind. */
    private Plan.Sail sail(double straight, double upwind, double downwind) {
        double angle = Math.abs(straight);
        boolean onItsTack = straight * plan.tack() > 0;
        double reluctance = plan.sail() == Plan.Sail.DIRECT ? HYSTERESIS : 0;
        if (angle < upwind - reluctance || (angle < Math.PI / 2 && !onItsTack && plan.sail() != Plan.Sail.DIRECT)) {
            return Plan.Sail.UPWIND;
        }
        if (angle > downwind + reluctance || (angle > Math.PI / 2 && !onItsTack && plan.sail() != Plan.Sail.DIRECT)) {
            return Plan.Sail.DOWNWIND;
        }
        return Plan.Sail.DIRECT;
    }

    private void remember(Sight sight) {
        double north = StrictMath.cos(sight.windFrom());
        double east = StrictMath.sin(sight.windFrom());
        if (Double.isNaN(lastLook)) {
            meanNorth = north;
            meanEast = east;
        } else {
            double share = 1 - StrictMath.exp(-(sight.time() - lastLook) / MEMORY);
            meanNorth += share * (north - meanNorth);
            meanEast += share * (east - meanEast);
        }
        lastLook = sight.time();
    }
}
