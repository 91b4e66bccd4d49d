package trimwright.foil;

/** First-order changes of the loads on one main foil, about one flow: exact derivatives. Not for use by two threads. */
public final class MainFoilChange {
    private final MainFoilModel model;
    private final Flow atShaft;
    private final Flow atTip;
    private final StrutState shaft;
    private final SubmergedState tip;
    private final FoilLoad shaftLoad = new FoilLoad();
    private final FoilLoad tipLoad = new FoilLoad();
    private final LiftState.Change lifts = new LiftState.Change();

    MainFoilChange(MainFoilModel model, Flow atShaft, Flow atTip, double rake) {
        this.model = model;
        this.atShaft = atShaft;
        this.atTip = atTip;
        shaft = new StrutState(model.shaft(), atShaft);
        tip = new SubmergedState(model.tip(), atTip, rake);
        shaft.putInto(shaftLoad);
        tip.putInto(tipLoad);
    }

    public FoilLoad shaftLoad() {
        return shaftLoad;
    }

    public FoilLoad tipLoad() {
        return tipLoad;
    }

    /** Of the load on the shaft, with a change of the flow at it. */
    public void shaft(FlowChange by, FoilChange out) {
        shaft.change(by, lifts, out);
    }

    /** Of the load on the tip, with changes of the flow at it and of its rake (rad). */
    public void tip(FlowChange by, double byRake, FoilChange out) {
        tip.change(by, byRake, lifts, out);
    }

    /** Of {@link MainFoilModel#downwash}, with changes of the flow, of the tip's own load and of the elevator's depth (m). */
    public double downwash(double distance, double depth, FlowChange by, FoilChange byTip, double byDepth) {
        return model.tip().downwashChange(atTip, tipLoad, distance, depth, by, byTip, byDepth);
    }

    /** Of {@link MainFoilModel#sidewash}, with changes of the flow and of the shaft's own load. */
    public double sidewash(double distance, double y, FlowChange by, FoilChange byShaft) {
        return model.shaft().sidewashChange(atShaft, shaftLoad, distance, y, by, byShaft);
    }
}
