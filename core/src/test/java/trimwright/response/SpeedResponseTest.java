package trimwright.response;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.response.SpeedResponse.Row;

class SpeedResponseTest {
    private static final SpeedResponse RESPONSE = new SpeedResponse(
            List.of(new Row(6, 10, 5, 0.125), new Row(10, 20, 9, 0.25)), List.of(new Row(6, 4, 4, 0.02)));

    @Test
    void betweenWindsItGoesOnAStraightLineAndBeyondThemItStays() {
        assertEquals(new Row(8, 15, 7, 0.1875), RESPONSE.at(8, -1));
        assertEquals(new Row(6, 10, 5, 0.125), RESPONSE.at(3, 1));
        assertEquals(new Row(10, 20, 9, 0.25), RESPONSE.at(30, 1));
        assertEquals(new Row(6, 4, 4, 0.02), RESPONSE.at(8, 2.5));
    }

    @Test
    void afterAStepItIsTheClosedFormOfAFirstOrderLag() {
        ReachableSpeed reachable = new ReachableSpeed(RESPONSE);
        reachable.step(10, 10, 6, 1, 1);
        double speed = 0;
        for (int i = 0; i < 7; i++) {
            speed = reachable.step(99, 12, 6, 1, 1);
        }
        assertEquals(12 - 2 * Math.exp(-7.0 / 10), speed, 1e-12);
        double top = speed;
        for (int i = 0; i < 3; i++) {
            speed = reachable.step(99, 9, 6, 1, 1);
        }
        assertEquals(9 + (top - 9) * Math.exp(-3.0 / 5), speed, 1e-12);
    }

    @Test
    void aShortGapOfTargetsIsBridgedAndALongOneBeginsAnew() {
        ReachableSpeed reachable = new ReachableSpeed(RESPONSE);
        reachable.step(10, 10, 6, 1, 1);
        for (int i = 0; i < 10; i++) {
            assertEquals(10, reachable.step(7, Double.NaN, 6, 1, 1));
        }
        assertTrue(Double.isNaN(reachable.step(7, Double.NaN, 6, 1, 1)));
        assertEquals(8, reachable.step(8, 12, 6, 1, 1));
    }

    @Test
    void theMisfitIsLeastAtTheTimeThatMadeTheTrace() {
        List<Double> speeds = new ArrayList<>();
        List<Double> targets = new ArrayList<>();
        for (int i = 0; i <= 80; i++) {
            // A boat that settles two per cent under its card before and after.
            speeds.add(0.98 * (i <= 20 ? 10 : 12 - 2 * Math.exp(-(i - 20) / 9.0)));
            targets.add(i < 20 ? 10.0 : 12.0);
        }
        GustTrace trace = new GustTrace(20, speeds, targets);
        // She is not quite settled at the end, a thousandth of the step.
        assertTrue(trace.misfit(9) < 1e-2, trace.misfit(9) + " m2/s2");
        assertTrue(trace.misfit(8) > trace.misfit(9) && trace.misfit(10) > trace.misfit(9));
        double[] quicker = trace.shares(4, 10);
        assertTrue(quicker[0] < 0.99 && quicker[1] < 1.001, quicker[0] + " to " + quicker[1]);
    }
}
