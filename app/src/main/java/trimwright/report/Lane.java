package trimwright.report;

import java.util.List;
import trimwright.units.Units;
import trimwright.wind.Quantity;

/**
 * A row of a moment's picture: one quantity of all boats.
 *
 * @param key of its name in the bundle
 * @param quantity in the track
 * @param unit from SI to what is shown
 * @param format of its figures
 * @param isOfTack whether its sign follows the side that the wind comes from, so that it is shown free of it
 */
record Lane(String key, Quantity quantity, double unit, String format, boolean isOfTack) {
    private static final double DEGREES = Units.toDegrees(1);

    static final List<Lane> ALL = List.of(
            new Lane("speed", Quantity.SPEED, Units.toKnots(1), "%.1f", false),
            new Lane("vmg", Quantity.VMG, Units.toKnots(1), "%.1f", false),
            new Lane("tws", Quantity.TWS, Units.toKnots(1), "%.1f", false),
            new Lane("twa", Quantity.COURSE_TWA, DEGREES, "%.0f", true),
            new Lane("heel", Quantity.ROLL, DEGREES, "%.1f", true),
            new Lane("ride_height", Quantity.RIDE_HEIGHT, 1, "%.2f", false),
            new Lane("camber", Quantity.CAMBER, DEGREES, "%.0f", true),
            new Lane("twist", Quantity.TWIST, DEGREES, "%.0f", true),
            new Lane("sheet", Quantity.SHEET, DEGREES, "%.1f", true),
            new Lane("sheet_load", Quantity.SHEET_LOAD, 1e-3, "%.1f", false));
}
