package trimwright.aim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.evidence.ValidatedAgainst;
import trimwright.weather.FilteredGusts;

/** Against series drawn by code that shares nothing with the main code: spectrum, filters and counting are written out anew. */
class GustsFeltValidationTest {
    private static final double WIND = 18;
    private static final double SPAN = 26;
    private static final double ANSWER = 0.4;
    private static final double SHORTEST = 1;

    private static final double STEP = 0.1;
    private static final int LENGTH = 36_000;
    private static final int WAVES = 200;

    @Test
    @ValidatedAgainst(
            source = "RICE-1944",
            where = "rate of passing a level, counted in 40 drawn hours of the wind that a wing on a boat feels",
            tolerance =
                    "2 per cent of the deviation; passings 5 per cent up to one deviation, 25 at three: the count's own spread")
    void whatIsFeltPassesARiseAsOftenAsInDrawnWind() {
        FilteredGusts felt = GustsFelt.of(0.8, WIND, SPAN, ANSWER, SHORTEST);
        double[] levels = {0, 1, 2, 3};
        double[] tolerances = {0.05, 0.05, 0.08, 0.25};
        long[] counts = new long[levels.length];
        double squares = 0;
        int hours = 40;
        for (int hour = 1; hour <= hours; hour++) {
            double[] drawn = drawn(new Random(hour));
            for (int i = 1; i < LENGTH; i++) {
                squares += drawn[i] * drawn[i];
                for (int k = 0; k < levels.length; k++) {
                    double level = levels[k] * felt.sigma();
                    counts[k] += drawn[i - 1] < level && drawn[i] >= level ? 1 : 0;
                }
            }
        }
        double seconds = hours * LENGTH * STEP;
        assertEquals(Math.sqrt(squares / (hours * (LENGTH - 1.0))), felt.sigma(), 0.02 * felt.sigma());
        for (int k = 0; k < levels.length; k++) {
            double expected = felt.ratePassing(levels[k] * felt.sigma()) * seconds;
            assertEquals(expected, (double) counts[k], tolerances[k] * expected, "at " + levels[k]);
        }
    }

    /** Kaimal's spectrum of deviation 0.8 m/s, lengths of IEC 61400-1 at 10 m, and the three filters. */
    private static double[] drawn(Random random) {
        double time = 8.1 * 0.7 * 10 / WIND;
        double ratio = Math.pow(WIND / 6 / 1e-3, 1.0 / WAVES);
        double[] series = new double[LENGTH];
        for (int k = 0; k < WAVES; k++) {
            double low = 1e-3 * Math.pow(ratio, k);
            double width = low * (ratio - 1);
            double f = low + width * random.nextDouble();
            double density = 0.64 * 4 * time / Math.pow(1 + 6 * f * time, 5.0 / 3.0);
            double across = 12 * f * SPAN / WIND;
            double overSpan = 2 * (across - 1 + Math.exp(-across)) / (across * across);
            double turn = 2 * Math.PI * f;
            double late = turn * ANSWER / Math.hypot(1, turn * ANSWER);
            double mean = Math.sin(Math.PI * f * SHORTEST) / (Math.PI * f * SHORTEST);
            double amplitude = Math.sqrt(2 * density * overSpan * width) * late * Math.abs(mean);
            double phase = 2 * Math.PI * random.nextDouble();
            double c = Math.cos(turn * STEP);
            double s = Math.sin(turn * STEP);
            double x = amplitude * Math.cos(phase);
            double y = amplitude * Math.sin(phase);
            for (int i = 0; i < LENGTH; i++) {
                series[i] += x;
                double next = x * c - y * s;
                y = x * s + y * c;
                x = next;
            }
        }
        return series;
    }

    /** Rice's formula turned round, worked by hand: passed once in 1000 times of the mean is sqrt(2 ln 1000) = 3.716922 deviations. */
    @Test
    void theRiseOfARateIsRicesFormulaTurnedRound() {
        FilteredGusts felt = GustsFelt.of(0.8, WIND, SPAN, ANSWER, SHORTEST);
        assertEquals(3.716922, felt.riseFor(felt.rate() / 1000) / felt.sigma(), 1e-6);
        assertEquals(0, felt.riseFor(2 * felt.rate()), 0);
    }

    @Test
    void aQuickerCrewAndALongerWingFeelLess() {
        double usual = GustsFelt.of(0.8, WIND, SPAN, ANSWER, SHORTEST).sigma();
        assertTrue(GustsFelt.of(0.8, WIND, SPAN, ANSWER / 2, SHORTEST).sigma() < usual);
        assertTrue(GustsFelt.of(0.8, WIND, 1.5 * SPAN, ANSWER, SHORTEST).sigma() < usual);
        assertTrue(GustsFelt.of(0.8, WIND, SPAN, ANSWER, 0).sigma() > usual);
        assertEquals(2 * usual, GustsFelt.of(1.6, WIND, SPAN, ANSWER, SHORTEST).sigma(), 1e-9);
    }
}
