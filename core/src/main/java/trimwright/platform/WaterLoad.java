package trimwright.platform;

import org.jspecify.annotations.Nullable;
import trimwright.foil.FoilLoad;
import trimwright.hull.HullLoad;
import trimwright.hull.HullModel;

/** What the water does to the boat in one state, element by element. */
public final class WaterLoad {
    final FoilLoad mainShaft = new FoilLoad();
    final FoilLoad mainTip = new FoilLoad();
    final FoilLoad leewardRudder = new FoilLoad();
    final FoilLoad windwardRudder = new FoilLoad();
    final FoilLoad leewardElevator = new FoilLoad();
    final FoilLoad windwardElevator = new FoilLoad();
    final HullLoad leewardHull = new HullLoad();
    final HullLoad windwardHull = new HullLoad();
    final ForceSum force = new ForceSum();
    final ForceSum elevators = new ForceSum();
    final ForceSum hulls = new ForceSum();
    final ForceSum windwardMain = new ForceSum();
    WaterPart.Wash leewardWash = WaterPart.Wash.NONE;
    WaterPart.Wash windwardWash = WaterPart.Wash.NONE;
    double mainTipDepth;
    double lowestHullClearance;

    @Nullable
    FoilLoad windwardShaft;

    @Nullable
    FoilLoad windwardTip;

    WaterLoad() {}

    /** Force and moment about the origin of the body axes. */
    public ForceSum force() {
        return force;
    }

    /** Share of the elevators. */
    ForceSum elevators() {
        return elevators;
    }

    /** Share of the hulls. */
    ForceSum hulls() {
        return hulls;
    }

    /** Share of the windward main foil: nothing where it is lifted. */
    ForceSum windwardMain() {
        return windwardMain;
    }

    /** Shaft of the leeward main foil. */
    public FoilLoad mainShaft() {
        return mainShaft;
    }

    /** Tip of the leeward main foil. */
    public FoilLoad mainTip() {
        return mainTip;
    }

    public FoilLoad leewardRudder() {
        return leewardRudder;
    }

    public FoilLoad windwardRudder() {
        return windwardRudder;
    }

    public FoilLoad leewardElevator() {
        return leewardElevator;
    }

    public FoilLoad windwardElevator() {
        return windwardElevator;
    }

    /** Shaft of the windward main foil, null where it is lifted. */
    public @Nullable FoilLoad windwardShaft() {
        return windwardShaft;
    }

    /** Tip of the windward main foil, null where it is lifted. */
    public @Nullable FoilLoad windwardTip() {
        return windwardTip;
    }

    public HullLoad leewardHull() {
        return leewardHull;
    }

    public HullLoad windwardHull() {
        return windwardHull;
    }

    /** Depth of the leeward tip's lift centre (m). */
    public double mainTipDepth() {
        return mainTipDepth;
    }

    /** Bottom of the lower hull above the water, abeam of the main foils (m); negative: in the water. */
    public double lowestHullClearance() {
        return lowestHullClearance;
    }

    /** Whether a hull that carries weight is more slender than the published series, so that its drag is doubtful. */
    public boolean isHullOutsideSeries() {
        return isOutside(leewardHull) || isOutside(windwardHull);
    }

    private static boolean isOutside(HullLoad hull) {
        return hull.buoyancy() > 0 && hull.slenderness() > HullModel.SLENDERNESS_MAX;
    }

    /** Buoyancy of both hulls (N). */
    public double buoyancy() {
        return leewardHull.buoyancy() + windwardHull.buoyancy();
    }
}
