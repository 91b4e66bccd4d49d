package trimwright.prepare;

import java.util.List;
import java.util.function.ToDoubleFunction;
import trimwright.units.Units;

/** One number of an aim as files carry it, in the unit at the end of its key; NaN where it is not known. */
record AimColumn(String key, ToDoubleFunction<BookAims.PointAim> value) {
    /** In the order of the files. */
    static final List<AimColumn> ALL = List.of(
            new AimColumn("righting_moment_aim_nm", aim -> aim.levels().momentAim()),
            new AimColumn("sheet_load_aim_n", aim -> aim.levels().loadAim()),
            new AimColumn("aim_price_kn", aim -> Units.toKnots(aim.priceAtLeast())));
}
