package trimwright.target;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.foil.FoilLoad;
import trimwright.platform.Conditions;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.platform.WaterChanges;
import trimwright.platform.WaterLoad;
import trimwright.platform.WaterLoadChange;

/** The share of water, weights and windage. */
final class WaterFunctions implements Functions {
    private static final List<Variable> VARIABLES = List.of(
            Variable.BOAT_SPEED,
            Variable.LEEWAY,
            Variable.RUDDER,
            Variable.MAIN_RAKE,
            Variable.ELEVATOR,
            Variable.HEEL,
            Variable.RIDE_HEIGHT,
            Variable.PITCH,
            Variable.ELEVATOR_DIFFERENTIAL,
            Variable.CREW_PLACE,
            Variable.TRUE_WIND_ANGLE);

    /** Largest share of a foil's most lift that a target uses (-); chosen, so that a wave does not stall it. */
    private static final double FOIL_STALL_SHARE = 0.9;

    /**
     * Largest suction over the one at which the water boils that a target uses (-); chosen, room for a small wave, and
     * clear of the place where the drag of boiling begins.
     */
    private static final double CAVITATION_SHARE = 0.97;

    /** Least share of the weight that the hulls carry on the displacement branch (-); chosen: less is taking off. */
    static final double HULL_SHARE = 0.1;

    private final Platform platform;
    private final Conditions conditions;
    private final Branch branch;
    /** 1 where the moment's row is a floor, -1 where it is a ceiling. */
    private final int momentSign;

    WaterFunctions(Platform platform, Conditions conditions, Branch branch) {
        this(platform, conditions, branch, 1);
    }

    private WaterFunctions(Platform platform, Conditions conditions, Branch branch, int momentSign) {
        this.platform = platform;
        this.conditions = conditions;
        this.branch = branch;
        this.momentSign = momentSign;
    }

    /** With the row of the moment's floor the other way up: what goals take from it is a floor of the negative moment. */
    static WaterFunctions withCeiling(Platform platform, Conditions conditions, Branch branch) {
        return new WaterFunctions(platform, conditions, branch, -1);
    }

    @Override
    public List<Variable> variables() {
        return VARIABLES;
    }

    @Override
    public double[] at(SailingState state) {
        WaterLoad load = platform.waterLoad(state, conditions);
        double[] row = new double[TrimProblem.ROW];
        TrimProblem.putForces(row, load.force(), platform);
        TrimProblem.putForces(row, platform.fixedLoad(state, conditions), platform);
        putUse(row, load);
        putElevators(row, load, state);
        Boat boat = platform.boat();
        row[LimitRow.TIP_DEPTH.place()] =
                (load.mainTipDepth() - boat.mainFoil().immersionMin()) / Variable.RIDE_HEIGHT.scale();
        row[LimitRow.HULLS.place()] = branch == Branch.FOILING
                ? (load.lowestHullClearance() - boat.limits().rideHeightMin()) / Variable.RIDE_HEIGHT.scale()
                : load.buoyancy() / platform.weight() - HULL_SHARE;
        row[LimitRow.MOMENT_FLOOR.place()] =
                momentSign * platform.rightingMoment(state, conditions, load) / (platform.weight() * platform.length());
        return row;
    }

    @Override
    public boolean addSlopes(SailingState state, boolean[] fixed, double[][] slopes) {
        WaterChanges changes = platform.waterChanges(state, conditions);
        double length = platform.weight() * platform.length();
        for (Variable variable : VARIABLES) {
            int i = variable.ordinal();
            if (fixed[i]) {
                continue;
            }
            double scale = variable.scale();
            WaterLoadChange by = changes.by(variable);
            TrimProblem.putForces(slopes, i, scale, by.force(), platform);
            TrimProblem.putForces(slopes, i, scale, platform.fixedLoadChange(state, conditions, variable), platform);
            WaterSlopes column = new WaterSlopes(slopes, i, scale);
            column.putUse(by);
            putElevators(column, variable, by);
            column.put(LimitRow.TIP_DEPTH, by.mainTipDepth() / Variable.RIDE_HEIGHT.scale());
            column.put(
                    LimitRow.HULLS,
                    branch == Branch.FOILING
                            ? by.lowestHullClearance() / Variable.RIDE_HEIGHT.scale()
                            : by.buoyancy() / platform.weight());
            double moment = platform.rightingMomentChange(state, conditions, changes.load(), by, variable);
            column.put(LimitRow.MOMENT_FLOOR, momentSign * moment / length);
        }
        return true;
    }

    private void putElevators(WaterSlopes column, Variable variable, WaterLoadChange by) {
        column.put(
                LimitRow.ELEVATOR_DOWN_FORCE,
                by.windwardElevator().lift() / platform.boat().limits().elevatorDownForce());
        double mean = variable == Variable.ELEVATOR ? 1 / Variable.ELEVATOR.scale() : 0;
        double apart = variable == Variable.ELEVATOR_DIFFERENTIAL ? 1 / Variable.ELEVATOR.scale() : 0;
        column.put(LimitRow.LEEWARD_ELEVATOR_UP, -(mean + apart));
        column.put(LimitRow.LEEWARD_ELEVATOR_DOWN, mean + apart);
        column.put(LimitRow.WINDWARD_ELEVATOR_UP, -(mean - apart));
        column.put(LimitRow.WINDWARD_ELEVATOR_DOWN, mean - apart);
    }

    private static void putUse(double[] row, WaterLoad load) {
        put(row, load.mainTip(), LimitRow.CAVITATION_TIP, LimitRow.STALL_TIP);
        put(row, load.mainShaft(), LimitRow.CAVITATION_SHAFT, LimitRow.STALL_SHAFT);
        put(row, load.leewardElevator(), LimitRow.CAVITATION_LEEWARD_ELEVATOR, LimitRow.STALL_LEEWARD_ELEVATOR);
        put(row, load.windwardElevator(), LimitRow.CAVITATION_WINDWARD_ELEVATOR, LimitRow.STALL_WINDWARD_ELEVATOR);
        put(row, load.leewardRudder(), LimitRow.CAVITATION_LEEWARD_RUDDER, LimitRow.STALL_LEEWARD_RUDDER);
        put(row, load.windwardRudder(), LimitRow.CAVITATION_WINDWARD_RUDDER, LimitRow.STALL_WINDWARD_RUDDER);
        FoilLoad windwardTip = load.windwardTip();
        FoilLoad windwardShaft = load.windwardShaft();
        put(row, windwardTip, LimitRow.CAVITATION_WINDWARD_TIP, LimitRow.STALL_WINDWARD_TIP);
        put(row, windwardShaft, LimitRow.CAVITATION_WINDWARD_SHAFT, LimitRow.STALL_WINDWARD_SHAFT);
        row[LimitRow.VENTILATION_WINDWARD_SHAFT.place()] =
                windwardShaft == null ? 1 : 1 - windwardShaft.ventilationRatio();
        row[LimitRow.VENTILATION_SHAFT.place()] = 1 - load.mainShaft().ventilationRatio();
        row[LimitRow.VENTILATION_LEEWARD_RUDDER.place()] =
                1 - load.leewardRudder().ventilationRatio();
        row[LimitRow.VENTILATION_WINDWARD_RUDDER.place()] =
                1 - load.windwardRudder().ventilationRatio();
    }

    /** @param foil null where it is lifted: then it keeps its limits */
    private static void put(double[] row, @Nullable FoilLoad foil, LimitRow cavitation, LimitRow stall) {
        if (foil == null) {
            row[cavitation.place()] = 1;
            row[stall.place()] = 1;
            return;
        }
        row[cavitation.place()] = CAVITATION_SHARE - foil.cavitationRatio();
        row[stall.place()] = FOIL_STALL_SHARE - foil.stallRatio();
    }

    private void putElevators(double[] row, WaterLoad load, SailingState state) {
        double limit = platform.boat().limits().elevatorDownForce();
        row[LimitRow.ELEVATOR_DOWN_FORCE.place()] = 1 + load.windwardElevator().lift() / limit;
        double most = platform.boat().rudder().elevatorAngleMax();
        double scale = Variable.ELEVATOR.scale();
        row[LimitRow.LEEWARD_ELEVATOR_UP.place()] = (most - state.leewardElevator()) / scale;
        row[LimitRow.LEEWARD_ELEVATOR_DOWN.place()] = (most + state.leewardElevator()) / scale;
        row[LimitRow.WINDWARD_ELEVATOR_UP.place()] = (most - state.windwardElevator()) / scale;
        row[LimitRow.WINDWARD_ELEVATOR_DOWN.place()] = (most + state.windwardElevator()) / scale;
    }
}
