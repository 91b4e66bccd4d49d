package trimwright.crew;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.flight.FoilGrip;
import trimwright.flight.HeelHold;
import trimwright.flight.LevelFlight;
import trimwright.motion.Controls;

/**
 * Flies the boat: rakes, elevators' differential, boards, place of the crew. Height is held through the climb that the rake
 * gives; in turns, with both boards down, the two rakes keep her flat; in straight sailing the heel is the trimmer's. Gains are
 * chosen.
 */
final class FlightController {
    /** Speed from which she is asked to fly, and below which she is let down (m/s): chosen. */
    private static final double FLY = 10.0;

    private static final double LET_DOWN = 8.4;
    /** How fast the height asked for changes (m/s): chosen. */
    private static final double RISE = 0.3;

    /** True wind angle from which she counts as sailing down the wind (rad): chosen. */
    private static final double DOWN_THE_WIND = Math.toRadians(100);

    /** More than the least immersion of the leeward foil that is kept (m): chosen. */
    private static final double SPARE_IMMERSION = 0.3;

    /** Ride height of a boat that is kept down (m): chosen, the lower part of the hulls is in the water. */
    private static final double DOWN = -0.1;

    private static final double RESTING_RAKE = Math.toRadians(-2);

    private final Boat boat;
    private final Habits habits;

    private final LevelFlight level;
    private final HeelHold heelHold;
    private final Boards boards;
    private final RightingMoment moment;
    private double asked;
    private double spread;
    private double portRake;
    private double starboardRake;
    private double elevator;
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
        boards = new Boards(boat);
        moment = new RightingMoment(boat, habits);
    }

    private FlightController(FlightController of, Habits habits) {
        boat = of.boat;
        this.habits = habits;
        level = of.level.copy();
        heelHold = of.heelHold.copy();
        boards = of.boards.copy();
        moment = of.moment.copy(habits);
    }

    /** One that goes on from here with those habits. */
    FlightController copy(Habits with) {
        FlightController other = new FlightController(this, with);
        other.asked = asked;
        other.spread = spread;
        other.portRake = portRake;
        other.starboardRake = starboardRake;
        other.elevator = elevator;
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
        boards.work(sight, aim, tack, coming, moment.spare());
        boolean both = Boards.isBothDown(sight);
        handOver(both, tack);
        height(sight, aim, coming, both ? 0 : risen(sight, aim, tack), dt);
        if (both && !flying) {
            rightOnHulls(sight, tack, dt);
        } else if (both) {
            spread = heelHold.spread(
                    sight.state(),
                    sight.rideHeight(),
                    Boards.isRound(turn, tack) ? tack * aim.attitude().heel() : 0,
                    dt);
        }
        rakes(sight, both, dt);
        pitch(sight, aim, dt);
        moment.work(sight, aim, tack, turn, conduct, canLightenWindward(sight, turn, tack), dt);
    }

    /** Takes over the controls as they are. */
    private void begin(Controls now) {
        hasBegun = true;
        boards.begin(now);
        wasBoth = Math.min(now.portBoard(), now.starboardBoard()) > Boards.DOWN_SHARE;
        spread = wasBoth ? (now.portRake() - now.starboardRake()) / 2 : 0;
        heelHold.learn(spread);
        double rake = wasBoth
                ? (now.portRake() + now.starboardRake()) / 2
                : now.portBoard() > now.starboardBoard() ? now.portRake() : now.starboardRake();
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
        boards.mirror();
        spread = -spread;
        heelHold.learn(spread);
        moment.mirror();
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
        return there && holdsHeel() && sight.speed() > Boards.ONE_BOARD && !boards.isUnloaded(sight, tack);
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
        boolean portUp = !both && sight.state().controls().portBoard() <= Boards.DOWN_SHARE;
        boolean starboardUp = !both && sight.state().controls().starboardBoard() <= Boards.DOWN_SHARE;
        portRake = portUp ? RESTING_RAKE : level.rakeWithin(level.rake() + spread);
        starboardRake = starboardUp ? RESTING_RAKE : level.rakeWithin(level.rake() - spread);
        if (both) {
            level.reached((portRake + starboardRake) / 2, dt);
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
        return moment.differential();
    }

    double portBoard() {
        return boards.port();
    }

    double starboardBoard() {
        return boards.starboard();
    }

    /** To starboard (m). */
    double crew() {
        return moment.crew();
    }

    private static double clamp(double value, double most) {
        return Math.max(-most, Math.min(most, value));
    }
}
