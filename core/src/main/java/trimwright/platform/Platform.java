package trimwright.platform;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.section.SectionFamily;
import trimwright.water.WaterState;
import trimwright.wing.Wing;

/**
 * A boat with one of its wings in steady sailing: forces of all elements and the six equations that they must satisfy
 * (docs/theory/platform.md; equations of hydro reference 3.2: surge, sway, heave, roll, pitch, yaw in body axes about their
 * origin). Immutable. Leaves out waves, unsteadiness, bending, and the wash from one hull's foils to the other's.
 */
public final class Platform {
    /** Name of the equations and constants as they stand; changes when a target could change. */
    public static final String MODEL_VERSION = "1";

    /** Strips of the wing; chosen: forces change by under a thousandth beyond (physics notes: 20 to 40 suffice). */
    private static final int STRIPS = 24;

    private final Boat boat;
    private final WingPart wing;
    private final WaterPart water;
    private final Weights weights;
    private final WindagePart windage;

    /** With the wing's sections in closed form. */
    public Platform(Boat boat, WingSpec wing, AirState air, WaterState water) {
        this(boat, wing, SectionFamily.closedForm(Wing.aspectRatio(wing)), air, water);
    }

    public Platform(Boat boat, WingSpec wing, SectionFamily sections, AirState air, WaterState water) {
        this.boat = boat;
        this.wing = new WingPart(wing, sections, STRIPS, air);
        this.weights = new Weights(boat, wing);
        // The hulls are drawn to float level with everybody aboard, so the centre of buoyancy lies below all weights.
        this.water = new WaterPart(boat, weights.centreX(), water);
        this.windage = new WindagePart(boat.windage(), air);
    }

    private Platform(Boat boat, WingPart wing, WaterPart water, Weights weights, WindagePart windage) {
        this.boat = boat;
        this.wing = wing;
        this.water = water;
        this.weights = weights;
        this.windage = windage;
    }

    /** The same boat and wing, the sheet allowed another largest load at the wing (N). */
    public Platform withSheetLoadMax(double load) {
        return new Platform(boat, wing.withSheetLoadMax(load), water, weights, windage);
    }

    public Boat boat() {
        return boat;
    }

    public WingSpec wing() {
        return wing.spec();
    }

    /** Weight of boat, wing and crew (N). */
    public double weight() {
        return weights.total();
    }

    /** Length that scales the moments (m). */
    public double length() {
        return boat.hulls().lengthOverall();
    }

    /** Depth of the hulls' bottoms when they carry all the weight, upright (m). */
    public double restingDraft() {
        return water.draft(weights.total());
    }

    /** Load of the wing, or null where its equations have no answer; {@code start}: load in a state nearby or null. */
    public @Nullable WingLoad wingLoad(SailingState state, Conditions conditions, @Nullable WingLoad start) {
        return wing.at(state, conditions, start);
    }

    /**
     * How a load found in that state changes with each of some variables (per unit of it): exact first derivatives. Null in still
     * air.
     */
    public WingLoadChange @Nullable [] wingLoadChanges(
            SailingState state, Conditions conditions, WingLoad load, List<Variable> by) {
        return wing.changes(state, conditions, load, by);
    }

    /** Loads of the water. */
    public WaterLoad waterLoad(SailingState state, Conditions conditions) {
        return water.at(state, conditions);
    }

    /**
     * Moment (N m) of weights, hulls, elevators and, where it is down, the windward main foil about body x through the lift
     * centre of the leeward main foil's tip: what holds the wing up. Positive to windward.
     */
    public double rightingMoment(SailingState state, Conditions conditions, WaterLoad load) {
        ForceSum sum = new ForceSum();
        weights.addTo(sum, state, conditions, Pose.of(state, conditions.windward()));
        sum.add(load.elevators());
        sum.add(load.hulls());
        sum.add(load.windwardMain());
        double about = load.mainTip().pointY() * sum.z() - load.mainTip().pointZ() * sum.y();
        return conditions.windward().sign() * (sum.k() - about);
    }

    /**
     * Moment (N m) of the air on the wing about the same axis as {@link #rightingMoment}: what the crew must hold. Positive to
     * leeward.
     */
    public double heelingMoment(SailingState state, Conditions conditions, WingLoad wingLoad) {
        WaterLoad load = waterLoad(state, conditions);
        ForceSum air = wingLoad.force();
        double about = load.mainTip().pointY() * air.z() - load.mainTip().pointZ() * air.y();
        return -conditions.windward().sign() * (air.k() - about);
    }

    /** Weights and windage. */
    public ForceSum fixedLoad(SailingState state, Conditions conditions) {
        ForceSum sum = new ForceSum();
        Pose pose = Pose.of(state, conditions.windward());
        weights.addTo(sum, state, conditions, pose);
        windage.addTo(sum, state, conditions, pose);
        return sum;
    }

    /** First-order changes of the loads of the water about a state: exact derivatives. */
    public WaterChanges waterChanges(SailingState state, Conditions conditions) {
        return water.about(state, conditions);
    }

    /** First-order change of {@link #fixedLoad} with a variable, per unit of it. */
    public ForceSum fixedLoadChange(SailingState state, Conditions conditions, Variable by) {
        ForceSum sum = new ForceSum();
        Pose pose = Pose.of(state, conditions.windward());
        PoseChange change = new PoseChange(pose, state, conditions.windward(), by);
        weights.addChange(sum, conditions, pose, change, state, by);
        windage.addChange(sum, state, conditions, pose, change, by);
        return sum;
    }

    /** First-order change of {@link #rightingMoment} with a variable (N m per unit of it), that of the water given. */
    public double rightingMomentChange(
            SailingState state, Conditions conditions, WaterLoad load, WaterLoadChange change, Variable by) {
        ForceSum sum = new ForceSum();
        Pose pose = Pose.of(state, conditions.windward());
        PoseChange poseChange = new PoseChange(pose, state, conditions.windward(), by);
        weights.addChange(sum, conditions, pose, poseChange, state, by);
        sum.add(change.elevators);
        sum.add(change.hulls);
        sum.add(change.windwardMain);
        double about = load.mainTip().pointY() * sum.z() - load.mainTip().pointZ() * sum.y();
        return conditions.windward().sign() * (sum.k() - about);
    }

    /** All loads in a state, or null where the wing's equations have no answer. */
    public @Nullable Balance balance(SailingState state, Conditions conditions, @Nullable WingLoad start) {
        WingLoad wingLoad = wingLoad(state, conditions, start);
        if (wingLoad == null) {
            return null;
        }
        return new Balance(
                this, state, conditions, wingLoad, waterLoad(state, conditions), fixedLoad(state, conditions));
    }
}
