package trimwright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;
import trimwright.foil.Flow;

class LaggedFoilValidationTest {
    @Test
    @ValidatedAgainst(
            source = "WAGNER-JONES",
            where = "Jones's function of a wing of aspect ratio six, here of a foil of 0.33 m chord at 12 m/s",
            tolerance = "1e-12: the same arithmetic in steps")
    void whatActsFollowsTheFunction() {
        LaggedFoil foil = new LaggedFoil(0.33);
        foil.act(new Flow(-12, 0, 0, 1), 0, 0.02);
        double share = LiftLag.WAGNER_SIX.after(2 * 12 * 0.02 / 0.33);
        Flow acts = foil.act(new Flow(-12, 0, 0.4, 1), Math.toRadians(2), 0.02);
        assertEquals(share * 0.4, acts.w(), 1e-12);
        assertEquals(share * Math.toRadians(2), foil.angle(), 1e-12);
        assertEquals(-12, acts.u(), 0);
        assertEquals(1, acts.depth(), 0);
    }

    @Test
    void beginsAsIfItsFirstFlowHadLasted() {
        LaggedFoil foil = new LaggedFoil(0.33);
        Flow first = new Flow(-12, 0.3, -0.2, 1);
        assertEquals(first, foil.act(first, 0.05, 0.02));
        assertEquals(0.05, foil.angle(), 1e-15);
        foil.act(new Flow(-12, 1, 1, 1), 0, 0.02);
        foil.forget();
        assertEquals(first, foil.act(first, 0.05, 0.02));
    }
}
