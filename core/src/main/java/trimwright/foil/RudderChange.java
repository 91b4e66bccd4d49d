package trimwright.foil;

/** First-order changes of the loads on one rudder and its elevator, about one flow. Not for use by two threads. */
public final class RudderChange {
    private final double cos;
    private final double sin;
    private final Flow atStrut;
    private final Flow atElevator;
    private final StrutState strut;
    private final SubmergedState elevator;
    private final FoilLoad strutLoad = new FoilLoad();
    private final FoilLoad elevatorLoad = new FoilLoad();
    private final LiftState.Change lifts = new LiftState.Change();

    RudderChange(RudderModel model, Flow atStrut, Flow atElevator, double rudderAngle, double elevatorAngle) {
        cos = StrictMath.cos(rudderAngle);
        sin = StrictMath.sin(rudderAngle);
        this.atStrut = RudderModel.turned(atStrut, cos, sin);
        this.atElevator = RudderModel.turned(atElevator, cos, sin);
        strut = new StrutState(model.strut(), this.atStrut);
        elevator = new SubmergedState(model.elevator(), this.atElevator, elevatorAngle);
        strut.putInto(strutLoad);
        strutLoad.turn(cos, -sin);
        elevator.putInto(elevatorLoad);
        elevatorLoad.turn(cos, -sin);
    }

    public FoilLoad strutLoad() {
        return strutLoad;
    }

    public FoilLoad elevatorLoad() {
        return elevatorLoad;
    }

    /** Of the load on the shaft, with changes of the flow at it and of the rudder angle (rad). */
    public void strut(FlowChange by, double byRudder, FoilChange out) {
        strut.change(turned(atStrut, by, byRudder), lifts, out);
        out.turn(cos, -sin, -byRudder, strutLoad);
    }

    /** Of the load on the elevator, with changes of the flow at it, of rudder angle and elevator angle (rad). */
    public void elevator(FlowChange by, double byRudder, double byElevator, FoilChange out) {
        elevator.change(turned(atElevator, by, byRudder), byElevator, lifts, out);
        out.turn(cos, -sin, -byRudder, elevatorLoad);
    }

    private FlowChange turned(Flow inRudder, FlowChange by, double byRudder) {
        return new FlowChange(
                by.u() * cos - by.v() * sin - inRudder.v() * byRudder,
                by.u() * sin + by.v() * cos + inRudder.u() * byRudder,
                by.w(),
                by.depth());
    }
}
