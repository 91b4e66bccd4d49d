package trimwright.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.platform.Variable;
import trimwright.power.PowerAccount;
import trimwright.target.TargetPoint;
import trimwright.units.Units;

class LoadCardPropertyTest {
    /** A target's loads are of the flow that its search ended with; another start ends a little beside it (relative). */
    private static final double FLOW = 1e-5;

    /** The search's own tolerance on the best speed (relative), as the book is checked to. */
    private static final double SEARCH = 1e-3;

    @Test
    void loadAndDriveAreThoseOfTheTarget() {
        for (TargetPoint point : DemoTargets.FOILING) {
            SheetLoad sheet = sheetOf(point, SheetLoad.PIECES);
            double load = point.getTarget().loads().sheetLoad();
            assertEquals(load, sheet.load(), FLOW * load);
            TrimmedWing.Held held =
                    new TrimmedWing(DemoTargets.PLATFORM, point.state(), point.trueWindSpeed()).asTrimmed();
            assertNotNull(held);
            double drive = point.getTarget().loads().drive();
            assertEquals(drive, held.drive(), FLOW * drive);
        }
    }

    @Test
    void finerPiecesChangeTheWorkByUnderAThousandth() {
        for (TargetPoint point : DemoTargets.FOILING) {
            double work = sheetOf(point, SheetLoad.PIECES).work();
            assertEquals(sheetOf(point, 2 * SheetLoad.PIECES).work(), work, 1e-3 * work);
        }
    }

    @Test
    void haulingBackCostsWorkAndEasingNone() {
        for (TargetPoint point : DemoTargets.FOILING) {
            SheetLoad sheet = sheetOf(point, SheetLoad.PIECES);
            assertTrue(sheet.load() > sheet.loadEased(), "an eased wing pulls less");
            assertTrue(sheet.secondsEasing() < sheet.secondsAllOut());
            assertTrue(sheet.secondsAllOut() <= sheet.secondsKept());
        }
    }

    /** No camber is faster than a free one, and the free one among them costs nothing. */
    @Test
    void everyOtherCamberCosts() {
        LoadCard card = new LoadCard(DemoTargets.PLATFORM, DemoTargets.HANDLING);
        TargetPoint point = DemoTargets.FOILING.get(1);
        double own = point.getTarget().trim().camber();
        LoadRow row = card.rowOf(point, List.of(Units.fromDegrees(15), own, own + 1));
        assertNotNull(row);
        assertEquals(2, row.cambers().size(), "a camber beyond the wing's range is left out");
        CamberLoad same = row.cambers().get(1);
        assertEquals(0, same.speedLost(), SEARCH * same.speed());
        CamberLoad flat = row.cambers().get(0);
        assertTrue(flat.speedLost() > same.speedLost());
        assertEquals(point.getTarget().boatSpeed(), flat.speed() + flat.speedLost(), SEARCH * flat.speed());
    }

    @Test
    void theAccountHaulsTheMeanOfTheRows() {
        LoadCard card = new LoadCard(DemoTargets.PLATFORM, DemoTargets.HANDLING);
        List<LoadRow> rows = DemoTargets.FOILING.stream()
                .map(point -> new LoadRow(point, sheetOf(point, SheetLoad.PIECES), List.of()))
                .toList();
        PowerAccount account = card.account(rows, 360, 1);
        double moment =
                0.5 * (rows.get(0).sheet().meanMoment() + rows.get(1).sheet().meanMoment());
        double expected = moment * DemoTargets.HANDLING.sheetWork().straight() / 0.7;
        assertEquals(expected, account.sheet(), 1e-9 * expected);
    }

    private static SheetLoad sheetOf(TargetPoint point, int pieces) {
        SheetLoad sheet =
                SheetLoad.of(DemoTargets.PLATFORM, DemoTargets.HANDLING, point.state(), point.trueWindSpeed(), pieces);
        assertNotNull(sheet);
        assertTrue(point.state().get(Variable.SHEET) > 0);
        return sheet;
    }
}
