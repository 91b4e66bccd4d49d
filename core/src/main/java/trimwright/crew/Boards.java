package trimwright.crew;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.motion.Controls;
import trimwright.units.Units;

/** Orders the boards: the windward one up where one foil carries her and the wing holds the heel, both down otherwise. All figures are chosen. */
public final class Boards {
    /** Speed above which the windward board is lifted (m/s). */
    public static final double ONE_BOARD = 10.5;

    /** Windward heel at which the second board is let down again (rad). */
    private static final double TOO_FAR = Math.toRadians(12);

    /** How much sooner it is let down where no righting moment is left to give up (rad). */
    private static final double NOTHING_LEFT = Math.toRadians(2);

    /** Rate of turn below which a gybe's swing is over (rad/s). */
    private static final double SWINGING = Math.toRadians(8);

    /** Share of a board that is down from which it counts as down (-). */
    static final double DOWN_SHARE = 0.4;

    private final double weight;
    private final Slide slide;
    private double port = 1;
    private double starboard = 1;

    Boards(Boat boat) {
        weight = Units.G
                * (boat.platform().mass()
                        + boat.wings().get(0).mass()
                        + boat.crew().mass());
        slide = new Slide();
    }

    private Boards(Boards of) {
        weight = of.weight;
        slide = of.slide.copy();
        port = of.port;
        starboard = of.starboard;
    }

    /** One that goes on from here by itself. */
    Boards copy() {
        return new Boards(this);
    }

    /** Takes over the boards as they are. */
    void begin(Controls now) {
        port = now.portBoard();
        starboard = now.starboardBoard();
    }

    /** From now on the other tack, all else alike. */
    void mirror() {
        double board = port;
        port = starboard;
        starboard = board;
    }

    /** Share of the port board that is to be down (-). */
    double port() {
        return port;
    }

    /** The same to starboard. */
    double starboard() {
        return starboard;
    }

    /** Whether both boards count as down now. */
    static boolean isBothDown(Sight sight) {
        Controls now = sight.state().controls();
        return Math.min(now.portBoard(), now.starboardBoard()) > DOWN_SHARE;
    }

    /** Whether the windward foil carries nothing. */
    boolean isUnloaded(Sight sight, int tack) {
        double lift = tack > 0 ? sight.loads().starboardMain() : sight.loads().portMain();
        return lift < 0.02 * weight;
    }

    /** Straight sailing, or a gybe in which the wing already is trimmed for the new tack. */
    static boolean isRound(@Nullable TurnOrder turn, int tack) {
        return turn == null || turn.kind() == TurnKind.GYBE && turn.toTack() == tack;
    }

    /**
     * Orders.
     *
     * @param turn the turn under way or about to begin, null where there is none
     * @param spare share of the righting moment that is given up already (-)
     */
    void work(Sight sight, Aim aim, int tack, @Nullable TurnOrder turn, double spare) {
        double heel = tack * sight.state().pose().roll();
        boolean settled = isRound(turn, tack)
                && (turn == null || hasSwung(sight, tack))
                && heel < Math.toRadians(5)
                && sight.speed() > ONE_BOARD
                && sight.rideHeight() > 0.4
                && sight.speed() > 0.6 * aim.speed();
        boolean alreadyUp = Math.min(port, starboard) < 0.5;
        boolean kept = (isRound(turn, tack) || isOnOneTack(turn))
                && sight.speed() > ONE_BOARD - 1
                && sight.rideHeight() > 0.1
                && heel
                                + RightingMoment.LOOK_AHEAD
                                        * tack
                                        * sight.state().rates().roll()
                        < TOO_FAR - spare * NOTHING_LEFT;
        boolean lift = !slide.look(sight, aim, tack, turn) && (alreadyUp ? kept : settled && isUnloaded(sight, tack));
        port = lift && tack < 0 ? 0 : 1;
        starboard = lift && tack > 0 ? 0 : 1;
    }

    /** Bear-aways and round-ups keep the leeward foil that they have. */
    private static boolean isOnOneTack(@Nullable TurnOrder turn) {
        return turn != null && (turn.kind() == TurnKind.BEAR_AWAY || turn.kind() == TurnKind.ROUND_UP);
    }

    /** The swing is over and the wing pulls on the new side. */
    private static boolean hasSwung(Sight sight, int tack) {
        return Math.abs(sight.state().rates().yaw()) < SWINGING
                && tack * sight.felt().angle() > Math.toRadians(15);
    }
}
