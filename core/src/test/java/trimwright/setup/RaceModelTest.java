package trimwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.target.TargetBook;

class RaceModelTest {
    private static final RaceLeg BEAT = new RaceLeg(0, 2000);
    private static final RaceLeg REACH = new RaceLeg(Math.PI / 2, 1500);
    private static final List<RaceLeg> COURSE = List.of(BEAT, REACH, BEAT);
    private static final TurnLosses NO_TURNS = new TurnLosses(0, 0, 0, 0, 0);

    private static final TargetBook ALWAYS_UP = HandMadeBook.of(wind -> 1, wind -> 3 + 1.5 * wind, 2, 2);

    private static Forecast forecast(double spread, double swing) {
        return new Forecast(8, spread, 0, swing, 0.12, 0, 0);
    }

    /** Each race drawn: one mean wind, a direction for each leg, the wind on the leg as it wanders. */
    @Test
    void expectedTimeAndItsIntervalAreThoseOfDrawnRaces() {
        double spread = 1.2;
        double swing = Math.toRadians(8);
        RaceOutlook outlook = new RaceModel(ALWAYS_UP, Map.of(), NO_TURNS).outlook(forecast(spread, swing), COURSE);
        Random random = new Random(3);
        int races = 40_000;
        double[] times = new double[races];
        double[] byWindAlone = new double[races];
        for (int i = 0; i < races; i++) {
            double wind = 8 + spread * random.nextGaussian();
            // Speed is a straight line in wind, so its mean over the wander is that at the mean.
            double speed = 3 + 1.5 * wind;
            times[i] = beat(speed, swing * random.nextGaussian())
                    + 1500 / speed
                    + beat(speed, swing * random.nextGaussian());
            byWindAlone[i] = (2 * 2000 * Math.exp(-swing * swing / 2) / Math.cos(HandMadeBook.UP) + 1500) / speed;
        }
        assertEquals(Arrays.stream(times).average().orElseThrow(), outlook.time(), 0.003 * outlook.time());
        Arrays.sort(byWindAlone);
        assertEquals(byWindAlone[races / 20], outlook.timeBelow(0.05), 0.01 * outlook.time());
        assertEquals(byWindAlone[races - races / 20], outlook.timeBelow(0.95), 0.01 * outlook.time());
        assertEquals(1, outlook.answeredShare(), 1e-12);
        assertEquals(1, outlook.foilingShare(), 1e-12);
    }

    private static double beat(double speed, double shift) {
        return 2000 * Math.cos(shift) / (speed * Math.cos(HandMadeBook.UP));
    }

    /** A wind far above the forecast's in which the book has no answer takes none away from those below. */
    @Test
    void aWindWithoutAnswerTellsNothingOfThoseBelow() {
        TargetBook ends = HandMadeBook.of(wind -> 1, wind -> wind > 18 ? Double.NaN : 3 + 1.5 * wind, 2, 2);
        RaceOutlook outlook = new RaceModel(ends, Map.of(), NO_TURNS).outlook(forecast(0.5, 0), COURSE);
        RaceOutlook whole = new RaceModel(ALWAYS_UP, Map.of(), NO_TURNS).outlook(forecast(0.5, 0), COURSE);
        assertEquals(1, outlook.answeredShare(), 1e-12);
        assertEquals(whole.time(), outlook.time(), 1e-9);
    }

    @Test
    void turnsCostTheirWayOnBeatsOnly() {
        TurnLosses turns = new TurnLosses(4, 50, 0, 0, 0);
        double without = new RaceModel(ALWAYS_UP, Map.of(), NO_TURNS)
                .outlook(forecast(0, 0), COURSE)
                .time();
        double with = new RaceModel(ALWAYS_UP, Map.of(), turns)
                .outlook(forecast(0, 0), COURSE)
                .time();
        assertEquals(2 * 4 * 50 / (15 * Math.cos(HandMadeBook.UP)), with - without, 0.01);
    }

    /** So many passings a second on each leg give Poisson's chance of one; the leg is sailed a tenth slower for them to be so few. */
    @Test
    void theChanceOfAGustIsThatOfAtLeastOnePassing() {
        AimedSailing sailing = new AimedSailing(1 / 3000.0, 0, 0.9);
        AimedLeg line = new AimedLeg(List.of(2.0, 20.0), List.of(sailing, sailing));
        RaceOutlook outlook =
                new RaceModel(ALWAYS_UP, Map.of(BEAT, line, REACH, line), NO_TURNS).outlook(forecast(0, 0), COURSE);
        double atTargets = new RaceModel(ALWAYS_UP, Map.of(), NO_TURNS)
                .outlook(forecast(0, 0), COURSE)
                .time();
        assertEquals(atTargets / 0.9, outlook.time(), 1e-6);
        double passings = outlook.time() / 3000;
        assertEquals(1 - Math.exp(-passings), outlook.overLimit().getOrDefault(GustLimit.SHEET_LOAD, 9.0), 1e-9);
        assertEquals(0, outlook.overLimit().getOrDefault(GustLimit.HEEL, 9.0), 1e-9);
        RaceOutlook unknown = new RaceModel(ALWAYS_UP, Map.of(BEAT, line), NO_TURNS).outlook(forecast(0, 0), COURSE);
        assertTrue(Double.isNaN(unknown.overLimit().getOrDefault(GustLimit.HEEL, 9.0)));
    }

    /** She comes up above 8.5 m/s only, and stays up from 7: between, the wind of the race decides by halves. */
    @Test
    void inALightWindSheIsUpForAPartOfTheTime() {
        TargetBook bistable = HandMadeBook.of(wind -> 4, wind -> 12, 7, 8.5);
        RaceModel model = new RaceModel(bistable, Map.of(), NO_TURNS);
        double light = model.outlook(forecast(0, 0).withMean(6), COURSE).foilingShare();
        double between = model.outlook(forecast(0, 0).withMean(7.75), COURSE).foilingShare();
        double fresh = model.outlook(forecast(0, 0).withMean(11), COURSE).foilingShare();
        assertTrue(light < 0.1, "light " + light);
        assertEquals(0.5, between, 0.05);
        assertTrue(fresh > 0.95, "fresh " + fresh);
        // Time follows from both speeds in these shares.
        double speed = between * 12 + (1 - between) * 4;
        double made = Math.cos(HandMadeBook.UP);
        double time = model.outlook(forecast(0, 0).withMean(7.75), COURSE).time();
        assertEquals((4000 / made + 1500) / speed, time, 0.01 * time);
    }

    @Test
    void windsOutsideTheBookAreNotAnswered() {
        RaceOutlook outlook = new RaceModel(ALWAYS_UP, Map.of(), NO_TURNS)
                .outlook(forecast(3, 0).withMean(17), COURSE);
        // The wander about a mean of more than some 18.5 m/s leaves the book, whose last wind is 20.
        assertTrue(outlook.answeredShare() < 0.8 && outlook.answeredShare() > 0.5, "" + outlook.answeredShare());
        assertEquals(
                0,
                new RaceModel(ALWAYS_UP, Map.of(), NO_TURNS)
                        .outlook(forecast(0, 0).withMean(24), COURSE)
                        .answeredShare());
    }
}
