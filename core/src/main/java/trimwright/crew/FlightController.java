package trimwright.crew;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.flight.FoilGrip;
import trimwright.flight.HeelHold;
import trimwright.flight.LevelFlight;
import trimwright.motion.Controls;
import trimwright.units.Units;

/**
 * Flies the boat: rakes, elevators' differential, boards, place of the crew. Height is held through the climb that the rake
 * gives; in turns, with both boards down, the two rakes keep her flat; in straight sailing the heel is the trimmer's. Gains are
 * chosen.
 */
final class FlightController {
    /** Speed from which she is asked to fly, and below which she is let down (m/s): chosen. */
    private static final double FLY = 10.0;

    private static final double LET_DOWN = 8.4;
    /** Speed above which the windward board is lifted (m/s): chosen. */
    private static final double ONE_BOARD = 10.5;

    /** Share of a board that is down from which it counts as down (-): chosen. */
    private static final double DOWN_SHARE = 0.4;

    /** How fast the height asked for changes (m/s): chosen. */
    private static final double RISE = 0.3;

    /** Windward heel at which the second board is let down again (rad): chosen. */
    private static final double TOO_FAR = Math.toRadians(12);

    /** How much sooner it is let down where no righting moment is left to give up (rad): chosen. */
    private static final double NOTHING_LEFT = Math.toRadians(2);

    /** True wind angle from which she counts as sailing down the wind (rad): chosen. */
    private static final double DOWN_THE_WIND = Math.toRadians(100);

    /** Rate of turn below which a gybe's swing is over (rad/s): chosen. */
    private static final double SWINGING = Math.toRadians(8);

    /** Rate at which the righting moment is given up that the windward foil would have to balance (1/s): chosen. */
    private static final double LIGHTENING = 0.6;

    /** More than the least immersion of the leeward foil that is kept (m): chosen. */
    private static final double SPARE_IMMERSION = 0.3;

    /** Share of the righting moment given up at once for each radian of heel beyond the aim, and how far ahead heel is looked (1/rad, s): chosen. */
    private static final double QUICK = 9;

    private static final double LOOK_AHEAD = 1.0;

    /** Share of the elevators' limit that is used, so that a gust does not pass it (-): chosen. */
    private static final double OF_LIMIT = 0.97;

    /** Ride height of a boat that is kept down (m): chosen, the lower part of the hulls is in the water. */
    private static final double DOWN = -0.1;

    private static final double RESTING_RAKE = Math.toRadians(-2);

    private final Boat boat;
    private final Habits habits;

    private final LevelFlight level;
    private final HeelHold heelHold;
    private final Slide slide;
    private double asked;
    private double spread;
    private double spare;
    private double portRake;
    private double starboardRake;
    private double elevator;
    private double differential;
    private double portBoard = 1;
    private double starboardBoard = 1;
    private double crew;
    private boolean flying;
    private boolean wasBoth = true;
    private boolean hasBegun;
    private boolean isKeptDown;
    private @Nullable TurnConduct conduct;

    FlightController(Boat boat, Habits habits) {
        this.boat = boat;
        this.habits = habits;
        FoilGrip grip = new FoilGrip(boat);
        level = new LevelFlight(boat, grip);
        heelHold = new HeelHold(grip);
        slide = new Slide();
    }

    private FlightController(FlightController of, Habits habits) {
        boat = of.boat;
        this.habits = habits;
        level = of.level.copy();
        heelHold = of.heelHold.copy();
        slide = of.slide.copy();
    }

    /** One that goes on from here with those habits. */
    FlightController copy(Habits with) {
        FlightController other = new FlightController(this, with);
        other.asked = asked;
        other.spread = spread;
        other.spare = spare;
        other.portRake = portRake;
        other.starboardRake = starboardRake;
        other.elevator = elevator;
        other.differential = differential;
        other.portBoard = portBoard;
        other.starboardBoard = starboardBoard;
        other.crew = crew;
        other.flying = flying;
        other.wasBoth = wasBoth;
        other.hasBegun = hasBegun;
        other.isKeptDown = isKeptDown;
        other.conduct = conduct;
        return other;
    }

    /**
     * @param turn the turn under way, null in straight sailing
     * @param coming the turn under way or about to begin, null where there is none
     */
    void work(Sight sight, Aim aim, int tack, @Nullable TurnOrder turn, @Nullable TurnOrder coming, double dt) {
        if (!hasBegun) {
            begin(sight.state().controls());
        }
        double speed = sight.speed();
        flying = speed > (flying ? LET_DOWN : FLY);
        boards(sight, aim, tack, coming);
        boolean both = isBothDown(sight);
        handOver(both, tack);
        height(sight, aim, coming, both ? 0 : risen(sight, aim, tack), dt);
        if (both && !flying) {
            rightOnHulls(sight, tack, dt);
        } else if (both) {
            spread = heelHold.spread(
                    sight.state(),
                    sight.rideHeight(),
                    isRound(turn, tack) ? tack * aim.attitude().heel() : 0,
                    dt);
        }
        rakes(sight, both, dt);
        pitch(sight, aim, dt);
        balance(sight, aim, tack, turn, dt);
    }

    /** Takes over the controls as they are. */
    private void begin(Controls now) {
        hasBegun = true;
        portBoard = now.portBoard();
        starboardBoard = now.starboardBoard();
        wasBoth = Math.min(portBoard, starboardBoard) > DOWN_SHARE;
        spread = wasBoth ? (now.portRake() - now.starboardRake()) / 2 : 0;
        heelHold.learn(spread);
        double rake = wasBoth
                ? (now.portRake() + now.starboardRake()) / 2
                : portBoard > starboardBoard ? now.portRake() : now.starboardRake();
        level.begin(rake, now.elevator());
    }

    /** From now on turn so; null for as is usual. */
    void conduct(@Nullable TurnConduct planned) {
        conduct = planned;
    }

    /** From now on with the hulls in the water. */
    void keepDown() {
        isKeptDown = true;
    }

    /** From now on she flies when she can. */
    void letFly() {
        isKeptDown = false;
    }

    /** From now on the other tack, all else alike. */
    void mirror() {
        double rake = portRake;
        portRake = starboardRake;
        starboardRake = rake;
        double board = portBoard;
        portBoard = starboardBoard;
        starboardBoard = board;
        spread = -spread;
        heelHold.learn(spread);
        differential = -differential;
        crew = -crew;
    }

    /** When the second board begins or ends to count, each foil keeps the rake that it has. */
    private void handOver(boolean both, int tack) {
        if (both && !wasBoth) {
            spread = tack * (level.rake() - RESTING_RAKE) / 2;
            heelHold.learn(spread);
            level.rake((level.rake() + RESTING_RAKE) / 2);
        } else if (!both && wasBoth) {
            level.rake(level.rake() + tack * spread);
            spread = 0;
        }
        wasBoth = both;
    }

    /** On the hulls the leeward foil lifts against leeward heel. */
    private void rightOnHulls(Sight sight, int tack, double dt) {
        double heel = tack * sight.state().pose().roll();
        double wanted = Math.max(0, Math.min(HeelHold.SPREAD_MOST, 0.8 * (Math.toRadians(-1.5) - heel)));
        spread += clamp(tack * wanted - spread, Math.toRadians(4) * dt);
        heelHold.learn(spread);
    }

    /** Down the wind the second board comes up sooner when wing and windward foil have less righting moment to work against. */
    private boolean canLightenWindward(Sight sight, @Nullable TurnOrder turn, int tack) {
        boolean there = conduct != null || turn == null && Math.abs(sight.trueWindAngle()) > DOWN_THE_WIND;
        return there && holdsHeel() && sight.speed() > ONE_BOARD && !isUnloaded(sight, tack);
    }

    private boolean isUnloaded(Sight sight, int tack) {
        return windwardLift(sight, tack) < 0.02 * weight();
    }

    /** Bear-aways and round-ups keep the leeward foil that they have. */
    private static boolean isOnOneTack(@Nullable TurnOrder turn) {
        return turn != null && (turn.kind() == TurnKind.BEAR_AWAY || turn.kind() == TurnKind.ROUND_UP);
    }

    /** Straight sailing, or a gybe in which the wing already is trimmed for the new tack. */
    private static boolean isRound(@Nullable TurnOrder turn, int tack) {
        return turn == null || turn.kind() == TurnKind.GYBE && turn.toTack() == tack;
    }

    /** The swing is over and the wing pulls on the new side. */
    private static boolean hasSwung(Sight sight, int tack) {
        return Math.abs(sight.state().rates().yaw()) < SWINGING
                && tack * sight.felt().angle() > Math.toRadians(15);
    }

    private static double windwardLift(Sight sight, int tack) {
        return tack > 0 ? sight.loads().starboardMain() : sight.loads().portMain();
    }

    private void boards(Sight sight, Aim aim, int tack, @Nullable TurnOrder turn) {
        double heel = tack * sight.state().pose().roll();
        boolean settled = isRound(turn, tack)
                && (turn == null || hasSwung(sight, tack))
                && heel < Math.toRadians(5)
                && sight.speed() > ONE_BOARD
                && sight.rideHeight() > 0.4
                && sight.speed() > 0.6 * aim.speed();
        boolean alreadyUp = Math.min(portBoard, starboardBoard) < 0.5;
        boolean kept = (isRound(turn, tack) || isOnOneTack(turn))
                && sight.speed() > ONE_BOARD - 1
                && sight.rideHeight() > 0.1
                && heel + LOOK_AHEAD * tack * sight.state().rates().roll() < TOO_FAR - spare * NOTHING_LEFT;
        boolean lift = !slide.look(sight, aim, tack, turn) && (alreadyUp ? kept : settled && isUnloaded(sight, tack));
        portBoard = lift && tack < 0 ? 0 : 1;
        starboardBoard = lift && tack > 0 ? 0 : 1;
    }

    private static boolean isBothDown(Sight sight) {
        return Math.min(
                        sight.state().controls().portBoard(),
                        sight.state().controls().starboardBoard())
                > DOWN_SHARE;
    }

    /** How far the leeward foil has come up beyond the depth that it shall keep (m): heel to windward lifts it. */
    private double risen(Sight sight, Aim aim, int tack) {
        double kept = Math.min(
                boat.mainFoil().immersionMin() + SPARE_IMMERSION,
                immersion(aim.attitude().rideHeight(), aim.attitude().heel()));
        double now = immersion(sight.rideHeight(), tack * sight.state().pose().roll());
        return Math.max(0, kept - now);
    }

    /** Wetted length of the leeward shaft (m) at a ride height (m) and a heel to windward (rad). */
    private double immersion(double rideHeight, double heel) {
        return boat.mainFoil().shaftLength() - rideHeight - boat.mainFoil().yJunction() * StrictMath.sin(heel);
    }

    private void height(Sight sight, Aim aim, @Nullable TurnOrder coming, double risen, double dt) {
        double more = conduct == null || coming == null ? 0 : conduct.height();
        double aimed = Math.max(0.5, aim.attitude().rideHeight() + habits.rideHeight() + more);
        aimed = Math.min(aimed, boat.limits().rideHeightMax());
        // What a slow boat cannot carry it gives up gently, before it falls.
        aimed *= Math.max(0, Math.min(1, (sight.speed() - LET_DOWN) / 2));
        if (isKeptDown) {
            aimed = DOWN;
        }
        if (!flying) {
            asked = sight.rideHeight();
            double unload = Math.toRadians(2) + Math.toRadians(2) * Math.max(0, Math.min(1, sight.speed() - LET_DOWN));
            level.drift(unload, Math.toRadians(3), dt);
            return;
        }
        asked = Math.max(asked + clamp(aimed - asked, RISE * dt * (aimed < asked ? 2 : 1)), sight.rideHeight() - 0.3);
        level.climb(sight.state(), sight.rideHeight(), asked - risen, dt);
    }

    /** The elevators together hold the pitch; on the hulls they are let go. */
    private void pitch(Sight sight, Aim aim, double dt) {
        if (flying || sight.rideHeight() > -0.1) {
            elevator = level.level(sight.state(), aim.attitude().pitch(), dt);
        } else {
            level.letPitchGo();
            elevator = 0;
        }
    }

    private void rakes(Sight sight, boolean both, double dt) {
        boolean portUp = !both && sight.state().controls().portBoard() <= DOWN_SHARE;
        boolean starboardUp = !both && sight.state().controls().starboardBoard() <= DOWN_SHARE;
        portRake = portUp ? RESTING_RAKE : level.rakeWithin(level.rake() + spread);
        starboardRake = starboardUp ? RESTING_RAKE : level.rakeWithin(level.rake() - spread);
        if (both) {
            level.reached((portRake + starboardRake) / 2, dt);
        }
    }

    /**
     * Righting moment: elevators' differential first, then the crew's place; less of both where the wing cannot use it. A lull
     * is met here at once: elevators move faster than a loaded sheet can be hauled.
     */
    private void balance(Sight sight, Aim aim, int tack, @Nullable TurnOrder turn, double dt) {
        double heel = tack * sight.state().pose().roll();
        double over = heel - aim.attitude().heel() - Math.toRadians(0.8);
        double byHeel = over > 0 ? 6 * over : Math.min(-0.15, 20 * (over + Math.toRadians(0.8)));
        double rate = canLightenWindward(sight, turn, tack) ? LIGHTENING : byHeel;
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
        double given = clamp(wanted, most);
        double missing = (given - wanted) * perAngle;
        double windward =
                tack > 0 ? sight.loads().starboardElevator() : sight.loads().portElevator();
        double limit = OF_LIMIT * (conduct == null ? 1 : share) * boat.limits().elevatorDownForce();
        if (windward < -limit) {
            given = Math.min(given, Math.abs(tack * sight.state().controls().differential()) * limit / -windward);
        }
        differential = isRound(turn, tack) ? tack * given : 0;
        double crewMoment = boat.crew().mass() * Units.G;
        double out = boat.crew().yMax() * (1 - 1.5 * Math.max(0, unused - 0.33)) - missing / crewMoment;
        crew = (turn == null ? tack : turn.toTack())
                * Math.max(-boat.crew().yMax(), Math.min(boat.crew().yMax(), out));
        if (turn != null && Math.abs(sight.trueWindAngle()) < Math.toRadians(35)) {
            crew = 0;
        }
    }

    /** Whether the foils hold the heel, so that the wing need not. */
    boolean holdsHeel() {
        return wasBoth && flying;
    }

    double portRake() {
        return portRake;
    }

    double starboardRake() {
        return starboardRake;
    }

    double elevator() {
        return elevator;
    }

    double differential() {
        return differential;
    }

    double portBoard() {
        return portBoard;
    }

    double starboardBoard() {
        return starboardBoard;
    }

    /** To starboard (m). */
    double crew() {
        return crew;
    }

    private double weight() {
        return Units.G
                * (boat.platform().mass()
                        + boat.wings().get(0).mass()
                        + boat.crew().mass());
    }

    private static double clamp(double value, double most) {
        return Math.max(-most, Math.min(most, value));
    }
}
