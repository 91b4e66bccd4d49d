package trimwright.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SetupChoiceTest {
    private static RaceOutlook outlook(double time, double chance) {
        Map<GustLimit, Double> over = Map.of(GustLimit.SHEET_LOAD, chance, GustLimit.HEEL, 0.0);
        return new RaceOutlook(List.of(
                new WindOutlook(6, 0.5, 1.5 * time, 0.2, over), new WindOutlook(8, 0.5, 0.5 * time, 0.9, over)));
    }

    private static SetupChoice.Setup setup(String wing, double less, double now, double more, double chance) {
        return new SetupChoice.Setup(wing, "standard", 500, outlook(now, chance), outlook(less, 0), outlook(more, 0.5));
    }

    private static final SetupChoice.Setup TALL = setup("tall", 1000, 900, 850, 0.3);
    private static final SetupChoice.Setup SHORT = setup("short", 1100, 930, 820, 0.05);
    private static final SetupChoice.Setup SLOW = setup("slow", 1200, 950, 840, 0.01);

    @Test
    void theFastestThatKeepsItsLimitsIsRecommendedAndTheFasterOneSaysWhyNot() {
        SetupChoice choice = new SetupChoice(List.of(TALL, SHORT, SLOW), 0.1);
        assertSame(SHORT, choice.recommended());
        assertEquals(SetupChoice.Doubt.GUST_PASSES_LIMIT, choice.doubt(TALL));
        assertNull(choice.doubt(SLOW));
        assertNull(new SetupChoice(List.of(TALL), 0.1).recommended());
    }

    @Test
    void regretIsAgainstTheFastestInThatWind() {
        SetupChoice choice = new SetupChoice(List.of(TALL, SHORT, SLOW), 0.1);
        assertEquals(0, choice.regret(TALL, SetupChoice.Setup::asForecast), 1e-9);
        assertEquals(30, choice.regret(SHORT, SetupChoice.Setup::asForecast), 1e-9);
        assertEquals(100, choice.regret(SHORT, SetupChoice.Setup::lessWind), 1e-9);
        assertEquals(30, choice.regret(TALL, SetupChoice.Setup::moreWind), 1e-9);
        assertEquals(1, choice.fastestShare(TALL), 1e-12);
        assertEquals(0, choice.fastestShare(SLOW), 1e-12);
    }

    @Test
    void whatTheBookDoesNotCoverIsNeverRecommended() {
        RaceOutlook half = new RaceOutlook(List.of(
                new WindOutlook(6, 0.5, Double.NaN, Double.NaN, Map.of()),
                new WindOutlook(8, 0.5, 800, 1, Map.of(GustLimit.SHEET_LOAD, 0.0, GustLimit.HEEL, 0.0))));
        SetupChoice.Setup setup = new SetupChoice.Setup("tall", "standard", 500, half, half, half);
        SetupChoice choice = new SetupChoice(List.of(setup), 0.1);
        assertEquals(SetupChoice.Doubt.NOT_COVERED, choice.doubt(setup));
        assertNull(choice.recommended());
        assertEquals(0.5, half.answeredShare(), 1e-12);
        assertEquals(800, half.time(), 1e-9);
    }

    /** The tall wing lacks the slow wind; it must not win by that. */
    @Test
    void setupsAreComparedInWindsThatAllAnswer() {
        Map<GustLimit, Double> none = Map.of(GustLimit.SHEET_LOAD, 0.0, GustLimit.HEEL, 0.0);
        RaceOutlook lacking = new RaceOutlook(List.of(
                new WindOutlook(6, 0.3, Double.NaN, Double.NaN, Map.of()), new WindOutlook(8, 0.7, 900, 1, none)));
        RaceOutlook whole =
                new RaceOutlook(List.of(new WindOutlook(6, 0.3, 2000, 0, none), new WindOutlook(8, 0.7, 880, 1, none)));
        SetupChoice.Setup tall = new SetupChoice.Setup("tall", "standard", 500, lacking, lacking, lacking);
        SetupChoice.Setup small = new SetupChoice.Setup("short", "standard", 500, whole, whole, whole);
        SetupChoice choice = new SetupChoice(List.of(tall, small), 0.1);
        assertEquals(20, choice.regret(tall, SetupChoice.Setup::asForecast), 1e-9);
        assertEquals(0, choice.regret(small, SetupChoice.Setup::asForecast), 1e-9);
    }

    @Test
    void anUnknownChanceIsNotASmallOne() {
        RaceOutlook unknown = new RaceOutlook(List.of(
                new WindOutlook(6, 1, 900, 0.2, Map.of(GustLimit.SHEET_LOAD, 0.0, GustLimit.HEEL, Double.NaN))));
        SetupChoice.Setup setup = new SetupChoice.Setup("tall", "standard", 500, unknown, unknown, unknown);
        assertEquals(SetupChoice.Doubt.CHANCE_NOT_KNOWN, new SetupChoice(List.of(setup), 0.1).doubt(setup));
    }
}
