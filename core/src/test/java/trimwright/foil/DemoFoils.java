package trimwright.foil;

import trimwright.boat.MainFoil;
import trimwright.boat.Rudder;
import trimwright.water.WaterState;

/** Foils of a 14 m boat for tests, and sea water of the towing-tank standard at 15 degrees. */
final class DemoFoils {
    static final WaterState SEA = new WaterState(1026.021, 1.1892e-6, 1670.9);
    static final MainFoil MAIN =
            new MainFoil(2.2, 0.40, 0.12, 1.6, 0.33, 0.10, 0.25, Math.toRadians(6), 4.42, 3.75, -0.1, 0.2, 0.5);
    static final Rudder RUDDER = new Rudder(-6.5, 1.9, 0.21, 0.115, 1.15, 0.17, 0.09, 0.15, 0.14);
    static final double KNOT = 1852.0 / 3600.0;

    private DemoFoils() {}
}
