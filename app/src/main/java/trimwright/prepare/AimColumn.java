package trimwright.prepare;

import java.util.List;
import java.util.function.ToDoubleFunction;
import trimwright.aim.Aim;
import trimwright.platform.Variable;
import trimwright.units.Units;

/** One number of an aim as files carry it, in the unit at the end of its key; speed made good is negative down the wind. */
record AimColumn(String key, ToDoubleFunction<Aim> value) {
    /** In the order of the files. */
    static final List<AimColumn> ALL = List.of(
            new AimColumn("righting_moment_aim_nm", aim -> aim.levels().momentAim()),
            new AimColumn("sheet_load_aim_n", aim -> aim.levels().loadAim()),
            new AimColumn("aim_twa_deg", aim -> degrees(aim, Variable.TRUE_WIND_ANGLE)),
            new AimColumn("aim_boat_speed_kn", aim -> Units.toKnots(aim.boatSpeed())),
            new AimColumn("aim_vmg_kn", aim -> Units.toKnots(aim.madeGood())),
            new AimColumn("aim_camber_deg", aim -> degrees(aim, Variable.CAMBER)),
            new AimColumn("aim_twist_deg", aim -> degrees(aim, Variable.TWIST)),
            new AimColumn("aim_twist_mid_ratio", aim -> aim.state().get(Variable.TWIST_MID_RATIO)),
            new AimColumn("aim_sheet_deg", aim -> degrees(aim, Variable.SHEET)),
            new AimColumn("aim_heel_deg", aim -> degrees(aim, Variable.HEEL)),
            new AimColumn("aim_ride_height_m", aim -> aim.state().get(Variable.RIDE_HEIGHT)),
            new AimColumn("aim_leeway_deg", aim -> degrees(aim, Variable.LEEWAY)),
            new AimColumn("aim_pitch_deg", aim -> degrees(aim, Variable.PITCH)),
            new AimColumn("aim_lost_kn", aim -> Units.toKnots(aim.lost())));

    private static double degrees(Aim aim, Variable variable) {
        return Units.toDegrees(aim.state().get(variable));
    }
}
