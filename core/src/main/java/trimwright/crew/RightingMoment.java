package trimwright.crew;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.units.Units;

/** Holds the righting moment that the wing works against: elevators against each other, and the crew's place. */
final class RightingMoment {
    /** Rate at which the righting moment is given up that the windward foil would have to balance (1/s): chosen. */
    private static final double LIGHTENING = 0.6;

    /** Share of the righting moment given up at once for each radian of heel beyond the aim (1/rad): chosen. */
    private static final double QUICK = 9;

    /** How far ahead heel is looked (s): chosen. */
    static final double LOOK_AHEAD = 1.0;

    /** Share of the elevators' limit that is used, so that a gust does not pass it (-): chosen. */
    private static final double OF_LIMIT = 0.97;

    private final Boat boat;
    private final Habits habits;
    private double spare;
    private double differential;
    private double crew;

    RightingMoment(Boat boat, Habits habits) {
        this.boat = boat;
        this.habits = habits;
    }

    /** One that goes on from here with those habits. */
    RightingMoment copy(Habits with) {
        RightingMoment other = new RightingMoment(boat, with);
        other.spare = spare;
        other.differential = differential;
        other.crew = crew;
        return other;
    }

    /** From now on the other tack, all else alike. */
    void mirror() {
        differential = -differential;
        crew = -crew;
    }

    /** Share of what could be carried that is given up (-). */
    double spare() {
        return spare;
    }

    /** Port elevator's angle less the mean (rad). */
    double differential() {
        return differential;
    }

    /** Place of the crew to starboard (m). */
    double crew() {
        return crew;
    }

    /**
     * Righting moment: elevators' differential first, then the crew's place; less of both where the wing cannot use it. A lull
     * is met here at once: elevators move faster than a loaded sheet can be hauled.
     *
     * @param conduct how a planned turn is sailed, null for as is usual
     * @param lightens whether righting moment is given up so that the windward board can come up
     */
    void work(
            Sight sight,
            Aim aim,
            int tack,
            @Nullable TurnOrder turn,
            @Nullable TurnConduct conduct,
            boolean lightens,
            double dt) {
        double heel = tack * sight.state().pose().roll();
        double over = heel - aim.attitude().heel() - Math.toRadians(0.8);
        double byHeel = over > 0 ? 6 * over : Math.min(-0.15, 20 * (over + Math.toRadians(0.8)));
        double rate = lightens ? LIGHTENING : byHeel;
        spare = Math.max(0, Math.min(1, spare + rate * dt));
        double speed = Math.max(5, sight.speed());
        double q = 0.5 * 1025 * speed * speed;
        double perAngle =
                2 * q * boat.rudder().elevatorArea() * 3.5 * boat.hulls().spacing() / 2;
        double slower = StrictMath.pow(aim.speed() / speed, 2);
        double scale = Math.min(2, slower);
        double most = boat.rudder().elevatorAngleMax();
        double ahead = over + LOOK_AHEAD * tack * sight.state().rates().roll();
        double unused = Math.min(1, spare + Math.max(0, QUICK * ahead));
        // A share of what could be carried: at low speed less, as the elevators' force; where heel asks for none,
        // nothing.
        double share = conduct == null ? habits.momentShare() : conduct.moment();
        double less = (1 - share) * aim.rightingMoment() * (1 - unused) / Math.max(1, slower);
        double wanted = aim.attitude().differential() * scale * (1 - unused) - less / perAngle;
        double given = Math.max(-most, Math.min(most, wanted));
        double missing = (given - wanted) * perAngle;
        double windward =
                tack > 0 ? sight.loads().starboardElevator() : sight.loads().portElevator();
        double limit = OF_LIMIT * (conduct == null ? 1 : share) * boat.limits().elevatorDownForce();
        if (windward < -limit) {
            given = Math.min(given, Math.abs(tack * sight.state().controls().differential()) * limit / -windward);
        }
        differential = Boards.isRound(turn, tack) ? tack * given : 0;
        double crewMoment = boat.crew().mass() * Units.G;
        double out = boat.crew().yMax() * (1 - 1.5 * Math.max(0, unused - 0.33)) - missing / crewMoment;
        crew = (turn == null ? tack : turn.toTack())
                * Math.max(-boat.crew().yMax(), Math.min(boat.crew().yMax(), out));
        if (turn != null && Math.abs(sight.trueWindAngle()) < Math.toRadians(35)) {
            crew = 0;
        }
    }
}
