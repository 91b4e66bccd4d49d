package trimwright.learned;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.chance.RandomStream;
import trimwright.units.Units;

/** Seasons drawn here, with a frontier, losses and errors that are known. */
class SeasonFitTest {
    private static final double UPWIND = Math.toRadians(50);
    private static final double DOWNWIND = Math.toRadians(140);
    private static final double WIND = Units.fromKnots(15);
    private static final double NOISE = 0.01;
    private static final double LOSS = 0.015;

    /** A wind that is read 2 % wrong, where speed goes with its power of 0.7. */
    private static final SensorDoubt DOUBT = new SensorDoubt(0, 0, 0.014);

    /** What the boat of these seasons truly differs by (-). */
    private static double truth(double angle) {
        return angle < Math.PI / 2 ? -0.03 : 0.02;
    }

    private static List<SteadyBlock> season(long seed, int sessions, double windOff) {
        RandomStream random = RandomStream.of(seed, "season");
        List<SteadyBlock> blocks = new ArrayList<>();
        for (int session = 0; session < sessions; session++) {
            double mean = WIND + Units.fromKnots(1.5) * random.normal();
            double off = windOff * random.normal();
            for (int k = 0; k < 24; k++) {
                double angle = (k < 12 ? UPWIND : DOWNWIND) + Math.toRadians(2) * random.normal();
                double wind = mean + Units.fromKnots(1) * random.normal();
                double lost = LOSS * Math.abs(random.normal());
                double ratio = truth(angle) + DOUBT.factor() / 0.02 * off + NOISE * random.normal() - lost;
                blocks.add(new SteadyBlock(session, wind, angle, ratio, 30, DOUBT));
            }
        }
        return blocks;
    }

    private static LearnedPlace at(List<SteadyBlock> blocks, double wind, double angle) {
        return SeasonFit.of(blocks, List.of(wind), List.of(angle)).get(0);
    }

    /** Sixteen seasons' mean lies within half a per cent, and the intervals hold the truth about as often as they say. */
    @Test
    void theFrontierIsFoundThroughLossesAndErrorsOfTheWind() {
        int held = 0;
        int all = 0;
        double[] sums = new double[2];
        int seasons = 16;
        for (int seed = 1; seed <= seasons; seed++) {
            List<LearnedPlace> places = SeasonFit.of(season(seed, 16, 0.02), List.of(WIND), List.of(UPWIND, DOWNWIND));
            for (int i = 0; i < 2; i++) {
                LearnedPlace place = places.get(i);
                double truth = truth(place.angle());
                assertTrue(place.isSupported());
                sums[i] += (place.logRatio() - truth) / seasons;
                held += place.low() <= Math.exp(truth) && Math.exp(truth) <= place.high() ? 1 : 0;
                all++;
            }
        }
        assertEquals(0, sums[0], 0.005, "mean off upwind");
        assertEquals(0, sums[1], 0.005, "mean off downwind");
        // Of 32 intervals of 95 %, 26 or fewer hold with a chance under one in a thousand (binomial).
        assertTrue(held >= 27, held + " of " + all);
    }

    @Test
    void whereNothingWasSailedItIsTheModel() {
        List<SteadyBlock> blocks = season(1, 16, 0.02);
        LearnedPlace reach = at(blocks, WIND, Math.toRadians(95));
        LearnedPlace strong = at(blocks, Units.fromKnots(28), UPWIND);
        assertEquals(0, strong.logRatio(), 1e-3);
        assertTrue(!strong.isSupported() && !reach.isSupported());
        LearnedPlace none = at(List.of(), WIND, UPWIND);
        assertEquals(new LearnedPlace(WIND, UPWIND, 0, Smooth.SIZE, 0, 0, 0), none);
    }

    @Test
    void oneSessionAloneMakesNoTarget() {
        LearnedPlace place = at(season(1, 1, 0), WIND, UPWIND);
        assertEquals(0, place.logRatio());
        assertTrue(!place.isSupported());
    }

    /** Half a minute ten per cent faster than all the rest: less than its interval, both in the thick of the season and alone. */
    @Test
    void oneLuckyRunMovesItByLessThanItsInterval() {
        List<SteadyBlock> blocks = season(1, 16, 0.02);
        for (double[] at : new double[][] {{WIND, UPWIND}, {Units.fromKnots(20), Math.toRadians(75)}}) {
            List<SteadyBlock> lucky = new ArrayList<>(blocks);
            lucky.add(new SteadyBlock(15, at[0], at[1], truth(at[1]) + 0.1, 30, DOUBT));
            LearnedPlace before = at(blocks, at[0], at[1]);
            LearnedPlace after = at(lucky, at[0], at[1]);
            double half = (after.high() - after.low()) / 2;
            assertTrue(Math.abs(after.ratio() - before.ratio()) < half / 2, before + " " + after);
        }
    }
}
