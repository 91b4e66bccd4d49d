package trimwright.platform;

import trimwright.foil.FoilChange;
import trimwright.foil.FoilLoad;
import trimwright.foil.MainFoilChange;
import trimwright.hull.HullChange;

/** First-order change of a {@link WaterLoad} with one variable of its state, per unit of that variable. */
public final class WaterLoadChange {
    final FoilChange mainShaft = new FoilChange();
    final FoilChange mainTip = new FoilChange();
    final FoilChange windwardShaft = new FoilChange();
    final FoilChange windwardTip = new FoilChange();
    final FoilChange leewardRudder = new FoilChange();
    final FoilChange windwardRudder = new FoilChange();
    final FoilChange leewardElevator = new FoilChange();
    final FoilChange windwardElevator = new FoilChange();
    final HullChange leewardHull = new HullChange();
    final HullChange windwardHull = new HullChange();
    final ForceSum force = new ForceSum();
    final ForceSum elevators = new ForceSum();
    final ForceSum hulls = new ForceSum();
    final ForceSum windwardMain = new ForceSum();
    double mainTipDepth;
    double lowestHullClearance;

    WaterLoadChange() {}

    static void add(FoilLoad foil, FoilChange by, WaterPart.Place place, ForceSum sum) {
        sum.add(by.forceX(), by.forceY(), by.forceZ(), place.x(), place.y(), foil.pointZ());
        sum.addMoved(foil.forceX(), foil.forceY(), foil.forceZ(), 0, 0, by.pointZ());
    }

    void addMain(MainFoilChange about, FoilChange shaft, FoilChange tip, WaterPart.Place place, ForceSum sum) {
        FoilLoad shaftLoad = about.shaftLoad();
        add(shaftLoad, shaft, new WaterPart.Place(shaftLoad.pointX(), shaftLoad.pointY(), 0), sum);
        add(about.tipLoad(), tip, place, sum);
    }

    /** Of force and moment about the origin of the body axes. */
    public ForceSum force() {
        return force;
    }

    public FoilChange mainShaft() {
        return mainShaft;
    }

    public FoilChange mainTip() {
        return mainTip;
    }

    /** Of the windward main foil's shaft: nothing where it is lifted. */
    public FoilChange windwardShaft() {
        return windwardShaft;
    }

    /** Of the windward main foil's tip: nothing where it is lifted. */
    public FoilChange windwardTip() {
        return windwardTip;
    }

    public FoilChange leewardRudder() {
        return leewardRudder;
    }

    public FoilChange windwardRudder() {
        return windwardRudder;
    }

    public FoilChange leewardElevator() {
        return leewardElevator;
    }

    public FoilChange windwardElevator() {
        return windwardElevator;
    }

    /** Of the depth of the leeward tip's lift centre (m). */
    public double mainTipDepth() {
        return mainTipDepth;
    }

    /** Of the lower hull's clearance (m). */
    public double lowestHullClearance() {
        return lowestHullClearance;
    }

    /** Of the buoyancy of both hulls (N). */
    public double buoyancy() {
        return leewardHull.buoyancy() + windwardHull.buoyancy();
    }
}
