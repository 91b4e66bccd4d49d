package trimwright.target;

import trimwright.foil.FoilChange;
import trimwright.platform.WaterLoadChange;

/** One column of the slopes of {@link WaterFunctions}: all rows by one scaled variable. */
final class WaterSlopes {
    private final double[][] slopes;
    private final int variable;
    private final double scale;

    WaterSlopes(double[][] slopes, int variable, double scale) {
        this.slopes = slopes;
        this.variable = variable;
        this.scale = scale;
    }

    /** Adds to a row its change per unit of the variable itself. */
    void put(LimitRow row, double by) {
        slopes[row.place()][variable] += scale * by;
    }

    void putUse(WaterLoadChange by) {
        put(by.mainTip(), LimitRow.CAVITATION_TIP, LimitRow.STALL_TIP);
        put(by.mainShaft(), LimitRow.CAVITATION_SHAFT, LimitRow.STALL_SHAFT);
        put(by.leewardElevator(), LimitRow.CAVITATION_LEEWARD_ELEVATOR, LimitRow.STALL_LEEWARD_ELEVATOR);
        put(by.windwardElevator(), LimitRow.CAVITATION_WINDWARD_ELEVATOR, LimitRow.STALL_WINDWARD_ELEVATOR);
        put(by.leewardRudder(), LimitRow.CAVITATION_LEEWARD_RUDDER, LimitRow.STALL_LEEWARD_RUDDER);
        put(by.windwardRudder(), LimitRow.CAVITATION_WINDWARD_RUDDER, LimitRow.STALL_WINDWARD_RUDDER);
        put(by.windwardTip(), LimitRow.CAVITATION_WINDWARD_TIP, LimitRow.STALL_WINDWARD_TIP);
        put(by.windwardShaft(), LimitRow.CAVITATION_WINDWARD_SHAFT, LimitRow.STALL_WINDWARD_SHAFT);
        put(LimitRow.VENTILATION_WINDWARD_SHAFT, -by.windwardShaft().ventilationRatio());
        put(LimitRow.VENTILATION_SHAFT, -by.mainShaft().ventilationRatio());
        put(LimitRow.VENTILATION_LEEWARD_RUDDER, -by.leewardRudder().ventilationRatio());
        put(LimitRow.VENTILATION_WINDWARD_RUDDER, -by.windwardRudder().ventilationRatio());
    }

    private void put(FoilChange by, LimitRow cavitation, LimitRow stall) {
        put(cavitation, -by.cavitationRatio());
        put(stall, -by.stallRatio());
    }
}
