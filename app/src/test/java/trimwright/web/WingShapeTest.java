package trimwright.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFiles;
import trimwright.prepare.WingCut;
import trimwright.target.TrimSetting;

class WingShapeTest {
    private final WingSpec wing = BoatFiles.find("whimbrel14").boat().getWing("tall");
    private final WingShape shape = new WingShape(wing);

    @Test
    void aStraightWingOnTheCentrelineHasTheChordOfItsTable() {
        WingShape.Section foot = shape.section(new WingCut(0, 0), 0);
        double chord = wing.stations().get(0).chord();
        assertEquals(chord, foot.chord(), 1e-12);
        assertEquals(wing.turningAxisRatio() * chord, leadingEdge(foot.main()).forward(), 1e-9);
        assertEquals(
                -(1 - wing.turningAxisRatio()) * chord,
                trailingEdge(foot.flap()).forward(),
                0.003 * chord);
        // The series has a blunt trailing edge.
        assertEquals(0, trailingEdge(foot.flap()).across(), 0.002 * chord);
    }

    @Test
    void easedTheTrailingEdgeGoesToPortAndTheFlapBendsBackToStarboard() {
        WingShape.Section eased = shape.section(new WingCut(0, 0), Math.toRadians(20));
        assertTrue(trailingEdge(eased.main()).across() < -0.5);
        assertTrue(leadingEdge(eased.main()).across() > 0);
        WingShape.Section cambered = shape.section(new WingCut(0, Math.toRadians(25)), Math.toRadians(20));
        assertTrue(trailingEdge(cambered.flap()).across()
                > trailingEdge(eased.flap()).across() + 0.5);
    }

    @Test
    void twistTakesTheFlapAngleAwayTowardTheHead() {
        TrimSetting trim = new TrimSetting(Math.toRadians(20), Math.toRadians(24), 0.4, 0);
        List<WingCut> cuts = WingCut.ofThree(wing, trim);
        assertEquals(20, Math.toDegrees(cuts.get(0).flapAngle()), 1e-9);
        assertEquals(wing.span() / 2, cuts.get(1).height(), 1e-12);
        assertEquals(20 - 0.4 * 24, Math.toDegrees(cuts.get(1).flapAngle()), 1e-9);
        assertEquals(-4, Math.toDegrees(cuts.get(2).flapAngle()), 1e-9);
    }

    private static WingShape.Spot leadingEdge(List<WingShape.Spot> outline) {
        return outline.stream()
                .max(Comparator.comparingDouble(WingShape.Spot::forward))
                .orElseThrow();
    }

    private static WingShape.Spot trailingEdge(List<WingShape.Spot> outline) {
        return outline.stream()
                .min(Comparator.comparingDouble(WingShape.Spot::forward))
                .orElseThrow();
    }
}
