package trimwright.boat;

/**
 * One rudder with its elevator; there are two, on the hulls' centrelines.
 *
 * @param x place forward of the main foils' lift centre (m), negative: aft
 * @param shaftLength below the bottom of the hull (m)
 * @param shaftChord (m)
 * @param shaftThicknessRatio (-)
 * @param elevatorSpan (m)
 * @param elevatorChord (m)
 * @param elevatorThicknessRatio (-)
 * @param elevatorAngleMax largest incidence of an elevator either way (rad)
 * @param rudderAngleMax largest rudder angle either way in straight sailing (rad)
 */
public record Rudder(
        double x,
        double shaftLength,
        double shaftChord,
        double shaftThicknessRatio,
        double elevatorSpan,
        double elevatorChord,
        double elevatorThicknessRatio,
        double elevatorAngleMax,
        double rudderAngleMax) {
    public double elevatorArea() {
        return elevatorSpan * elevatorChord;
    }
}
