package trimwright.boat;

/**
 * One L-shaped main foil: a near-vertical shaft for side force and an inboard tip for lift.
 *
 * @param shaftLength of the shaft below the bottom of the hull, fully down (m)
 * @param shaftChord (m)
 * @param shaftThicknessRatio (-)
 * @param tipSpan (m)
 * @param tipChord (m)
 * @param tipThicknessRatio (-)
 * @param tipDesignLiftCoefficient lift coefficient for which the tip's camber is made (-)
 * @param tipDihedral upward slope of the tip toward inboard (rad)
 * @param yJunction shaft and tip join this far from the centreline (m)
 * @param yLift lift centre of the tip from the centreline (m)
 * @param rakeMin least incidence of the tip (rad)
 * @param rakeMax largest incidence of the tip (rad)
 * @param immersionMin least depth of the tip that is allowed (m)
 */
public record MainFoil(
        double shaftLength,
        double shaftChord,
        double shaftThicknessRatio,
        double tipSpan,
        double tipChord,
        double tipThicknessRatio,
        double tipDesignLiftCoefficient,
        double tipDihedral,
        double yJunction,
        double yLift,
        double rakeMin,
        double rakeMax,
        double immersionMin) {
    public double tipArea() {
        return tipSpan * tipChord;
    }
}
