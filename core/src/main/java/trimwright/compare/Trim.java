package trimwright.compare;

import trimwright.target.Target;

/**
 * What is held against the target's: free of the tack.
 *
 * @param incidence apparent wind at 10 m from the bow less the sheet angle: of the wind to the main element (rad)
 * @param camber flap angle at the foot (rad)
 * @param twist camber less the flap angle at the head (rad)
 * @param heel to windward (rad)
 * @param rideHeight (m)
 */
public record Trim(double incidence, double camber, double twist, double heel, double rideHeight) {
    static final int SIZE = 5;

    static Trim of(Target target) {
        return new Trim(
                target.apparentWindAngle() - target.trim().sheet(),
                target.trim().camber(),
                target.trim().twist(),
                target.attitude().heel(),
                target.attitude().rideHeight());
    }

    double[] toArray() {
        return new double[] {incidence, camber, twist, heel, rideHeight};
    }

    /** Without a zero error that turns its sign with the tack. */
    Trim less(Trim zero, int sign) {
        return new Trim(
                incidence - sign * zero.incidence,
                camber - sign * zero.camber,
                twist - sign * zero.twist,
                heel - sign * zero.heel,
                rideHeight - sign * zero.rideHeight);
    }
}
