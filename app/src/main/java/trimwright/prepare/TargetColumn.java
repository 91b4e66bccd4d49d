package trimwright.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import trimwright.target.ControlCost;
import trimwright.target.Target;
import trimwright.target.TargetLimit;
import trimwright.target.TargetPoint;
import trimwright.units.Units;

/**
 * One number of a solved point as files carry it, in the unit at the end of its key. Angles of the true wind are to the
 * course through the water, the apparent wind is to the bow; speed made good is negative down the wind.
 */
record TargetColumn(String key, ToDoubleFunction<TargetPoint> value) {
    private static final List<TargetColumn> TARGET = List.of(
            of("boat_speed_kn", t -> Units.toKnots(t.boatSpeed())),
            new TargetColumn("vmg_kn", TargetColumn::madeGoodKn),
            of("awa_deg", t -> Units.toDegrees(t.apparentWindAngle())),
            of("aws_kn", t -> Units.toKnots(t.apparentWindSpeed())),
            of("camber_deg", t -> Units.toDegrees(t.trim().camber())),
            of("camber_low_deg", t -> Units.toDegrees(t.bands().camber().low())),
            of("camber_high_deg", t -> Units.toDegrees(t.bands().camber().high())),
            of("twist_deg", t -> Units.toDegrees(t.trim().twist())),
            of("twist_low_deg", t -> Units.toDegrees(t.bands().twist().low())),
            of("twist_high_deg", t -> Units.toDegrees(t.bands().twist().high())),
            of("twist_mid_ratio", t -> t.trim().twistMidRatio()),
            of("sheet_deg", t -> Units.toDegrees(t.trim().sheet())),
            of("sheet_low_deg", t -> Units.toDegrees(t.bands().sheet().low())),
            of("sheet_high_deg", t -> Units.toDegrees(t.bands().sheet().high())),
            of("heel_deg", t -> Units.toDegrees(t.attitude().heel())),
            of("ride_height_m", t -> t.attitude().rideHeight()),
            of("leeway_deg", t -> Units.toDegrees(t.attitude().leeway())),
            of("pitch_deg", t -> Units.toDegrees(t.attitude().pitch())),
            of("rudder_deg", t -> Units.toDegrees(t.attitude().rudder())),
            of("main_rake_deg", t -> Units.toDegrees(t.attitude().mainRake())),
            of("elevator_deg", t -> Units.toDegrees(t.attitude().elevator())),
            of("elevator_differential_deg", t -> Units.toDegrees(t.attitude().elevatorDifferential())),
            of("sheet_load_n", t -> t.loads().sheetLoad()),
            of("turning_moment_nm", t -> t.loads().turningMoment()),
            of("righting_moment_nm", t -> t.loads().rightingMoment()),
            of("righting_moment_ratio", t -> t.loads().rightingMomentRatio()),
            of("side_force_n", t -> t.loads().sideForce()),
            of("drive_force_n", t -> t.loads().drive()));

    /** In the order of the files. */
    static final List<TargetColumn> ALL = all();

    private static List<TargetColumn> all() {
        List<TargetColumn> all = new ArrayList<>(TARGET);
        addCost(all, "camber", "sheet", t -> t.bands().costs().camber());
        addCost(all, "twist", "sheet", t -> t.bands().costs().twist());
        addCost(all, "sheet", "camber", t -> t.bands().costs().sheet());
        for (TargetLimit limit : TargetLimit.values()) {
            all.add(of(
                    "gain_" + limit.key() + "_kn",
                    t -> Units.toKnots(t.bands().costs().easing(limit))));
        }
        return List.copyOf(all);
    }

    private static void addCost(
            List<TargetColumn> all, String control, String partner, Function<Target, ControlCost> cost) {
        all.add(of(
                control + "_off_one_loss_kn", t -> Units.toKnots(cost.apply(t).offByOne())));
        all.add(of(
                control + "_tenth_low_deg",
                t -> Units.toDegrees(cost.apply(t).tenth().low())));
        all.add(of(
                control + "_tenth_high_deg",
                t -> Units.toDegrees(cost.apply(t).tenth().high())));
        all.add(of(
                control + "_three_tenths_low_deg",
                t -> Units.toDegrees(cost.apply(t).threeTenths().low())));
        all.add(of(
                control + "_three_tenths_high_deg",
                t -> Units.toDegrees(cost.apply(t).threeTenths().high())));
        all.add(of(
                control + "_alone_tenth_deg", t -> Units.toDegrees(cost.apply(t).aloneTenth())));
        all.add(of(
                control + "_alone_three_tenths_deg",
                t -> Units.toDegrees(cost.apply(t).aloneThreeTenths())));
        all.add(of(control + "_flat_top_deg", t -> Units.toDegrees(cost.apply(t).flatTop())));
        all.add(of(partner + "_per_" + control + "_ratio", t -> cost.apply(t).together()));
    }

    private static TargetColumn of(String key, ToDoubleFunction<Target> value) {
        return new TargetColumn(key, point -> value.applyAsDouble(point.getTarget()));
    }

    private static double madeGoodKn(TargetPoint point) {
        return Units.toKnots(point.getTarget().boatSpeed() * StrictMath.cos(point.trueWindAngle()));
    }
}
