package trimwright.foil;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.boat.Side;
import trimwright.evidence.ValidatedAgainst;
import trimwright.water.FrictionLine;

class FoilDragValidationTest {
    @Test
    @ValidatedAgainst(
            source = "TORENBEEK",
            where = "form factor 1 + 2.7 t/c + 100 (t/c)^4",
            tolerance = "6e-5, half of the last digit")
    void formFactorMatchesTorenbeek() {
        // Mark: formula SEEN in an open hydrofoil code; values DERIVED.
        assertEquals(1.280, SectionDrag.formFactor(0.10), 6e-5);
        assertEquals(1.3447, SectionDrag.formFactor(0.12), 6e-5);
    }

    @Test
    @ValidatedAgainst(
            source = "ITTC-57",
            where =
                    "friction and profile drag of a 0.33 m chord, 10 % thick, at 27 and 50 kn in sea water of 15 degrees",
            tolerance = "2e-6 in friction, 5e-5 in profile drag: last digits")
    void profileDragMatchesTheHandCalculation() {
        // Mark: DERIVED.
        double nu = DemoFoils.SEA.kinematicViscosity();
        double slow = 27 * DemoFoils.KNOT * 0.33 / nu;
        double fast = 50 * DemoFoils.KNOT * 0.33 / nu;
        assertEquals(3.85e6, slow, 0.01e6);
        assertEquals(7.14e6, fast, 0.01e6);
        assertEquals(3.566e-3, FrictionLine.coefficient(slow), 2e-6);
        assertEquals(3.184e-3, FrictionLine.coefficient(fast), 2e-6);
        assertEquals(0.0091, SectionDrag.profile(slow, 0.10, 0), 5e-5);
        assertEquals(0.0081, SectionDrag.profile(fast, 0.10, 0), 6e-5);
    }

    @Test
    @ValidatedAgainst(
            source = "HOERNER",
            where =
                    "ch. 10, spray 0.24 q t^2; against Chapman 1971 (0.088 q t^2 at 12 % thickness) and 0.38 as upper end",
            tolerance = "exact; inside the published spread")
    void sprayDragLiesInThePublishedSpread() {
        // Mark: both formulas SEEN in an open hydrofoil code; the upper end is a third party's comment.
        double t = 0.12 * 0.40;
        assertEquals(0.24 * t * t, SectionDrag.sprayArea(t), 1e-15);
        double chapman = (0.009 + 0.013 * 0.12) * t * 0.40;
        assertEquals(0.088, chapman / (t * t), 5e-4);
        assertTrue(SectionDrag.sprayArea(t) > chapman && SectionDrag.sprayArea(t) < 0.38 * t * t);
    }

    @Test
    @ValidatedAgainst(
            source = "HOERNER",
            where = "ch. 8, joint of two members of mean thickness ratio 0.11: 0.1557 q t^2; nothing for thin ones",
            tolerance = "5e-5, half of the last digit")
    void junctionDragMatchesHoerner() {
        // Mark: formula SEEN in an open hydrofoil code; value DERIVED.
        assertEquals(0.1557, SectionDrag.junctionArea(0.11, 1), 6e-5);
        assertEquals(0, SectionDrag.junctionArea(0.05, 1), 0);
    }

    @Test
    @ValidatedAgainst(
            source = "ROOFTOP",
            where = "-Cp_min = (1 + t/c + CL/4)^2 - 1: lift that 8 to 12 % thick sections may carry at 50 kn, 1 m deep",
            tolerance = "1e-3 in lift coefficient")
    void suctionOfTheIdealSectionMatchesTheHandCalculation() {
        // Mark: DERIVED (elliptic thickness and even load); no measured section is this good.
        double sigma = DemoFoils.SEA.cavitationNumber(1.0, 50 * DemoFoils.KNOT);
        assertEquals(0.3232, sigma, 2e-4);
        double[][] rows = {{0.08, 0.281}, {0.09, 0.241}, {0.10, 0.201}, {0.12, 0.121}};
        for (double[] row : rows) {
            assertEquals(sigma, Cavitation.suction(row[0], row[1]), 6e-4);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "MTH",
            where = "eq. 12.3-12.4 turned to speed: where a suction of 0.30 to 0.70 boils, 0.5 and 1.0 m deep",
            tolerance = "0.01 kn")
    void speedAtWhichASuctionBoilsMatches() {
        // Mark: DERIVED; three of them also SEEN in a note.
        double[][] rows = {
            {0.5, 0.30, 50.70}, {0.5, 0.35, 46.94}, {0.5, 0.50, 39.27}, {0.5, 0.70, 33.19},
            {1.0, 0.30, 51.90}, {1.0, 0.35, 48.05}, {1.0, 0.50, 40.20}, {1.0, 0.70, 33.98}
        };
        for (double[] row : rows) {
            assertEquals(row[1], DemoFoils.SEA.cavitationNumber(row[0], row[2] * DemoFoils.KNOT), 2e-4);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "BENSON-LAND",
            where = "2200 lb/ft2 as the most that a fully cavitating foil carried",
            tolerance = "1 %: the ceiling is approached smoothly")
    void noFoilCarriesMoreThanTheCavitatingCeiling() {
        // Mark: SEEN on the report's summary page.
        double ceiling = 2200 * 4.4482216152605 / (0.3048 * 0.3048);
        assertEquals(ceiling, Cavitation.LOAD_CEILING, 50);
        MainFoilModel foil = new MainFoilModel(DemoFoils.MAIN, Side.STARBOARD, DemoFoils.SEA);
        FoilLoad load = new FoilLoad();
        double largest = 0;
        for (double rake = 0; rake < 0.6; rake += 0.01) {
            foil.tip(new Flow(-30, 0, 0, 1.2), rake, load);
            largest = Math.max(largest, load.lift() / DemoFoils.MAIN.tipArea());
        }
        assertTrue(largest < ceiling && largest > 0.9 * ceiling, "largest load " + largest);
    }

    @Test
    @ValidatedAgainst(
            source = "VENTILATION",
            where = "inception lift of a surface-piercing strut 1 m deep at 18, 27, 35, 50 kn",
            tolerance = "0.002")
    void ventilationInceptionMatchesTheFormula() {
        // Mark: formula SEEN in an open hydrofoil code; values DERIVED.
        double[][] rows = {{18, .581}, {27, .469}, {35, .404}, {50, .318}};
        for (double[] row : rows) {
            double speed = row[0] * DemoFoils.KNOT;
            double vapour = DemoFoils.SEA.cavitationNumber(0, speed);
            assertEquals(row[1], Ventilation.inceptionLift(vapour, speed / Math.sqrt(9.80665)), 0.002);
        }
    }

    @Test
    @ValidatedAgainst(
            source = "STRUT-SIN2",
            where = "induced drag of a strut with load sin 2 theta: 9 pi / 64, as span efficiency 0.7205",
            tolerance = "1e-6; 5e-5")
    void strutEfficiencyFollowsFromItsLoad() {
        // Mark: DERIVED.
        assertEquals(0.441786, 1 / (Math.PI * SurfaceStrut.FREE_TIP), 1e-6);
        assertEquals(0.7205, SurfaceStrut.FREE_TIP, 5e-5);
    }
}
