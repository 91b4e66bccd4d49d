package trimwright.foil;

import trimwright.boat.Rudder;
import trimwright.boat.Side;
import trimwright.water.WaterState;

/**
 * Forces on one rudder and its elevator, which turn together. Rudder angle is positive with the trailing edge to
 * starboard, which turns the bow to starboard; elevator angle is positive nose up, which lifts the stern.
 */
public final class RudderModel {
    private final SurfaceStrut strut;
    private final SubmergedFoil elevator;

    /** Rudder on the hull's centreline, {@code yOutward} from the boat's (m). */
    public RudderModel(Rudder rudder, double yOutward, Side side, WaterState water) {
        double meanRatio = 0.5 * (rudder.shaftThicknessRatio() + rudder.elevatorThicknessRatio());
        double meanThickness = 0.5
                * (rudder.shaftThicknessRatio() * rudder.shaftChord()
                        + rudder.elevatorThicknessRatio() * rudder.elevatorChord());
        StrutShape strutShape = new StrutShape(
                rudder.shaftLength(),
                rudder.shaftChord(),
                rudder.shaftThicknessRatio(),
                SurfaceStrut.FREE_TIP,
                SectionDrag.junctionArea(meanRatio, meanThickness));
        strut = new SurfaceStrut(strutShape, rudder.x(), side.sign() * yOutward, water);
        FoilShape elevatorShape =
                new FoilShape(rudder.elevatorSpan(), rudder.elevatorChord(), rudder.elevatorThicknessRatio(), 0, 0);
        elevator = new SubmergedFoil(elevatorShape, side, rudder.x(), yOutward, rudder.shaftLength(), water);
    }

    /** Where the rudder's shaft stands and how much of it is wet. */
    public SurfaceStrut strut() {
        return strut;
    }

    /** Where the elevator's lift acts. */
    public SubmergedFoil elevator() {
        return elevator;
    }

    /** First-order changes of both loads about one flow at each; angles as for {@link #elevator}. */
    public RudderChange about(Flow atStrut, Flow atElevator, double rudderAngle, double elevatorAngle) {
        return new RudderChange(this, atStrut, atElevator, rudderAngle, elevatorAngle);
    }

    /** Force on the rudder's shaft; depth in the flow is that of its lower end. */
    public void strut(Flow flow, double rudderAngle, FoilLoad out) {
        strut(flow, rudderAngle, 1, out);
    }

    /** The same with that share of the lift slope left (-), as air that has come down the rudder leaves it. */
    public void strut(Flow flow, double rudderAngle, double kept, FoilLoad out) {
        double cos = StrictMath.cos(rudderAngle);
        double sin = StrictMath.sin(rudderAngle);
        strut.load(turned(flow, cos, sin), kept, out);
        out.turn(cos, -sin);
    }

    /** Force on the elevator; depth in the flow is that of its reference point. */
    public void elevator(Flow flow, double rudderAngle, double elevatorAngle, FoilLoad out) {
        double cos = StrictMath.cos(rudderAngle);
        double sin = StrictMath.sin(rudderAngle);
        elevator.load(turned(flow, cos, sin), elevatorAngle, out);
        out.turn(cos, -sin);
    }

    /** The flow in axes that turn with the rudder: with the trailing edge to starboard the nose points to port. */
    static Flow turned(Flow flow, double cos, double sin) {
        return new Flow(flow.u() * cos - flow.v() * sin, flow.u() * sin + flow.v() * cos, flow.w(), flow.depth());
    }
}
