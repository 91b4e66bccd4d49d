package trimwright.boat;

import java.util.List;
import trimwright.units.Units;

/**
 * The invented demo class for tests in core, which knows no boat files; the shipped boat file says the same (a test of the
 * app compares them). The class gives the figures without a note; those marked chosen were set to be plausible for a boat
 * of that size.
 */
public final class Whimbrel14 {
    private Whimbrel14() {}

    public static Boat boat() {
        return new Boat(
                "whimbrel14",
                "Whimbrel 14",
                // waterline, beam, draft and block coefficient chosen: the hulls displace boat, tall wing and crew
                new Hulls(14.2, 13.9, 0.70, 0.36, 7.7, 0.40),
                // 2,350 kg without crew, of which the tall wing is 420; place chosen
                new Mass(1930, -1.75, 1.0),
                // x and height chosen
                new Crew(6, 85, -1.9, 3.7, 1.5),
                List.of(tall(), shortWing()),
                standardFoils(),
                List.of(standardFoils(), lightFoils()),
                // area abeam, height and x chosen
                new Windage(2.6, 8.0, 1.2, -1.5),
                limits(),
                // chosen: 0.8 m above the tall wing's head, turning with it
                new WindSensor(28.3, 0.2, true),
                new Antenna(12.5, 0),
                handling());
    }

    private static Handling handling() {
        // Rates and powers of the size that references give; the rest chosen.
        return new Handling(
                new Handling.ControlRates(deg(40), 0.3, deg(9), deg(5)),
                new Handling.Grinders(2, 230, 12_000, 1420),
                new Handling.SheetWork(deg(20) / 60, deg(15)),
                0.6,
                List.of(
                        new Handling.OilUser("rakes", 70, 900),
                        new Handling.OilUser("boards", 0, 1600),
                        new Handling.OilUser("camber", 15, 1400),
                        new Handling.OilUser("twist", 10, 300)),
                "an invented boat, nothing measured: what oil takes and gives i"
                        + "s chosen, rates and powers are of the size that references give");
    }

    private static WingSpec tall() {
        // thickness ratios, slot, mass and its height, x chosen
        return new WingSpec(
                "tall",
                List.of(new WingStation(0, 5.2, 0.20), new WingStation(13, 4.1, 0.17), new WingStation(26, 1.8, 0.12)),
                1.5,
                -0.8,
                0.40,
                0.22,
                FlapPanels.SINGLE,
                null,
                0.012,
                420,
                9.9,
                trim(),
                sheet());
    }

    private static WingSpec shortWing() {
        return new WingSpec(
                "short",
                List.of(new WingStation(0, 4.9, 0.20), new WingStation(10, 4.0, 0.17), new WingStation(20, 2.0, 0.12)),
                1.5,
                -0.8,
                0.40,
                0.22,
                FlapPanels.SINGLE,
                null,
                0.012,
                340,
                7.8,
                trim(),
                sheet());
    }

    private static TrimRange trim() {
        // head flap, sheet and stall margin chosen
        return new TrimRange(deg(38), deg(40), deg(-15), deg(60), deg(2));
    }

    private static SheetTackle sheet() {
        // all chosen; the sheet pulls near the flap's trailing edge at the foot
        return new SheetTackle(4.0, 8, 0.7, 6_000);
    }

    private static FoilSpec standardFoils() {
        return new FoilSpec("standard", mainFoil(), rudder());
    }

    private static FoilSpec lightFoils() {
        // all that differs chosen
        return new FoilSpec(
                "light",
                new MainFoil(2.2, 0.40, 0.12, 1.8, 0.42, 0.12, 0.35, deg(2), 4.42, 3.67, deg(-3), deg(11), 0.4),
                new Rudder(-6.5, 1.9, 0.21, 0.115, 1.25, 0.19, 0.09, deg(7), deg(8)));
    }

    private static MainFoil mainFoil() {
        // design lift, dihedral, places, rake range and least depth chosen
        return new MainFoil(2.2, 0.40, 0.12, 1.6, 0.33, 0.10, 0.25, deg(2), 4.42, 3.75, deg(-3), deg(11), 0.4);
    }

    private static Rudder rudder() {
        // thickness of the shaft and the angles chosen
        return new Rudder(-6.5, 1.9, 0.21, 0.115, 1.15, 0.17, 0.09, deg(7), deg(8));
    }

    private static Limits limits() {
        // all but the elevator's down force chosen; no speed limit
        return new Limits(6500, deg(5), deg(-2), 0.35, 1.4, deg(-1), deg(4), null, null, null, null);
    }

    private static double deg(double degrees) {
        return Units.fromDegrees(degrees);
    }
}
