package trimwright.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import trimwright.boat.Handling;
import trimwright.boat.Whimbrel14;
import trimwright.power.CriticalPower;

/** People on the handles against the model of {@link CriticalPower}, which has its own tests with published figures. */
class GrindingTest {
    private static final Handling HANDLING =
            Objects.requireNonNull(Whimbrel14.boat().handling());
    private static final int COUNT = HANDLING.grinders().count();
    private static final CriticalPower ONE = CriticalPower.of(HANDLING.grinders());

    @Test
    void theyTireAsTheModelSaysAndRestBrings() {
        Grinding grinding = new Grinding(HANDLING);
        double oil = oil();
        double sheet = 300;
        assertEquals(1, grinding.rested());
        sail(grinding, COUNT * sheet, 20);
        double left = ONE.left(ONE.store(), sheet + oil, 20);
        assertEquals(left / ONE.store(), grinding.rested(), 1e-9);
        assertTrue(grinding.rested() < 0.8, grinding.rested() + " left");
        sail(grinding, 0, 60);
        assertEquals(ONE.left(left, oil, 60) / ONE.store(), grinding.rested(), 1e-4);
    }

    /** Spent, they give what they keep up for long and no more, oil first. */
    @Test
    void spentTheyGiveWhatCanBeKeptUp() {
        Grinding grinding = new Grinding(HANDLING);
        double fresh = grinding.forSheet();
        sail(grinding, COUNT * 900.0, 60);
        assertEquals(0, grinding.rested());
        assertEquals(COUNT * (ONE.power() - oil()), grinding.forSheet(), 1e-9);
        assertTrue(grinding.forSheet() < fresh / 2, grinding.forSheet() + " W of " + fresh);
        Grinding copy = grinding.copy(HANDLING);
        sail(copy, 0, 100);
        assertEquals(0, grinding.rested());
        assertTrue(copy.rested() > 0);
    }

    @Test
    void aFileThatDoesNotSayHasPeopleThatDoNotTire() {
        Grinding grinding = new Grinding(null);
        sail(grinding, 2000, 600);
        assertEquals(1, grinding.rested());
        assertEquals(900, grinding.forSheet());
    }

    private static double oil() {
        return HANDLING.oilUsers().stream()
                        .mapToDouble(Handling.OilUser::straight)
                        .sum()
                / HANDLING.oilEfficiency()
                / COUNT;
    }

    private static void sail(Grinding grinding, double sheet, double seconds) {
        for (int i = 0; i < Math.round(seconds / 0.02); i++) {
            grinding.work(sheet, false, 0.02);
        }
    }
}
