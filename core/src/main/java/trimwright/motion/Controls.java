package trimwright.motion;

/**
 * Where everything stands that the crew moves, in the signed form: what has a tack is positive in normal sailing with the
 * wind from starboard.
 *
 * @param sheet main element to the centreline (rad), positive: trailing edge to port
 * @param camber flap angle at the foot (rad), positive: trailing edge to starboard
 * @param twist camber less the flap angle at the head (rad)
 * @param twistMid share of the twist reached at half height (-), 0.5 where it grows evenly
 * @param portRake incidence of the port main foil's tip (rad)
 * @param starboardRake incidence of the starboard main foil's tip (rad)
 * @param elevator mean incidence of the elevators (rad), positive lifts the stern
 * @param differential port elevator's incidence less the mean (rad)
 * @param rudder (rad), positive turns the bow to starboard
 * @param portBoard how far the port main foil is down (-), 0 to 1
 * @param starboardBoard how far the starboard main foil is down (-), 0 to 1
 * @param crew middle of the crew to starboard of the centreline (m)
 */
public record Controls(
        double sheet,
        double camber,
        double twist,
        double twistMid,
        double portRake,
        double starboardRake,
        double elevator,
        double differential,
        double rudder,
        double portBoard,
        double starboardBoard,
        double crew) {
    /** Port and starboard exchanged. */
    Controls mirrored() {
        return new Controls(
                -sheet,
                -camber,
                -twist,
                twistMid,
                /* portRake= */ starboardRake,
                /* starboardRake= */ portRake,
                elevator,
                -differential,
                -rudder,
                /* portBoard= */ starboardBoard,
                /* starboardBoard= */ portBoard,
                -crew);
    }
}
