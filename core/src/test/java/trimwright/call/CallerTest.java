package trimwright.call;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.boat.Limits;
import trimwright.live.Gauge;
import trimwright.live.LiveFigures;
import trimwright.live.LiveFigures.Estimate;
import trimwright.live.LiveState;
import trimwright.live.Sensor;
import trimwright.live.SensorFault;
import trimwright.segment.Tack;
import trimwright.units.Units;
import trimwright.wind.SpeedSource;

/** One test a rule. The boat sails at 14 m/s reachable; each field that a test needs otherwise is set before. */
class CallerTest {
    private static final long SECOND = 1_000_000_000L;

    private final Caller caller = new Caller(CallRules.DEFAULT);
    private long now = 1_778_328_000_000_000_000L;

    private LiveState state = LiveState.ON_FOILS;
    private double share = 0.93;
    private double error = 0.1;
    private double twa = 0.9;
    private Gauge camber = degrees(25, 20, 25, 30);
    private Gauge twist = degrees(15, 27, 34, 40);
    private Estimate moment = Estimate.NONE;
    private double heel = Math.toRadians(5);
    private List<SensorFault> faults = List.of();
    private Tone tone = Tone.NONE;
    private Around around = Around.NOTHING_KNOWN;

    private static Gauge degrees(double value, double low, double aim, double high) {
        return new Gauge(Math.toRadians(value), Math.toRadians(low), Math.toRadians(aim), Math.toRadians(high));
    }

    private LiveFigures figures() {
        return new LiveFigures(
                now,
                state,
                new LiveFigures.Motion(13, SpeedSource.OVER_GROUND, 0, 8, heel, 0.6),
                new LiveFigures.Wind(8, 0, twa, 18, 0.4, Tack.of(twa)),
                new LiveFigures.Aim(14, new Estimate(14, error), new Estimate(share, error / 14), List.of()),
                new LiveFigures.Trim(camber, twist, Gauge.NONE),
                new LiveFigures.Load(moment, 95_000, 100_000, Math.toRadians(5), 0.08),
                faults);
    }

    private CallAnswer next() {
        now += SECOND;
        CallAnswer answer = caller.step(figures(), tone, around);
        assertNotNull(answer);
        return answer;
    }

    /** Calls of so many seconds. */
    private List<Call> sail(int seconds) {
        List<Call> calls = new ArrayList<>();
        for (int i = 0; i < seconds; i++) {
            Call call = next().call();
            if (call != null) {
                calls.add(call);
            }
        }
        return calls;
    }

    private @Nullable Silence silenceAfter(int seconds) {
        assertEquals(List.of(), sail(seconds));
        return next().silence();
    }

    @Test
    void aCallSpeaksOfTwentySecondsAndSaysHowMuch() {
        assertEquals(Silence.SETTLING, silenceAfter(18));
        Call call = next().call();
        assertNotNull(call);
        assertEquals(CallKind.TWIST_MORE, call.kind());
        assertEquals(5, call.degrees());
        assertEquals(0.07 * 14, call.lost(), 1e-9);
        assertEquals(Math.toRadians(34), call.aim(), 1e-9);
        assertEquals(Math.toRadians(15), call.value(), 1e-9);
    }

    @Test
    void oneGustOfAFewSecondsIsNoCall() {
        share = 1;
        sail(30);
        share = 0.9;
        assertEquals(List.of(), sail(4));
        share = 1;
        assertEquals(List.of(), sail(30));
    }

    @Test
    void atMostOneInThirtySecondsAndThreeALeg() {
        List<Call> calls = sail(300);
        assertEquals(3, calls.size());
        for (int i = 1; i < calls.size(); i++) {
            assertTrue(calls.get(i).timeNanos() - calls.get(i - 1).timeNanos() >= 30 * SECOND);
        }
        assertEquals(Silence.LEG_FULL, next().silence());
        twa = -0.9;
        assertEquals(3, sail(300).size());
    }

    @Test
    void nothingUnderHalfAKnotOrTwoStandardErrors() {
        share = 1 - Units.fromKnots(0.49) / 14;
        error = 0;
        assertEquals(Silence.NOTHING_TO_SAY, silenceAfter(40));
        state = LiveState.EYES_OUT;
        next();
        state = LiveState.ON_FOILS;
        share = 0.93;
        // Twenty seconds hold two independent errors of the wind.
        error = 0.98 / 2 * Math.sqrt(2) * 1.01;
        assertEquals(Silence.NOTHING_TO_SAY, silenceAfter(40));
        error = 0.98 / 2 * Math.sqrt(2) * 0.99;
        assertEquals(1, sail(25).size());
    }

    @Test
    void aControlInItsBandOrWorthLittleIsLeftAlone() {
        twist = degrees(28, 27, 34, 40);
        assertEquals(Silence.NOTHING_TO_SAY, silenceAfter(40));
        twist = degrees(26, 27, 34, 40);
        assertEquals(Silence.NOTHING_TO_SAY, silenceAfter(40));
    }

    @Test
    void ofTwoChangesTheOneThatPromisesMostIsCalled() {
        camber = degrees(36, 20, 25, 30);
        share = 0.85;
        assertEquals(CallKind.TWIST_MORE, sail(21).get(0).kind());
        camber = degrees(45, 20, 25, 30);
        sail(30);
        assertEquals(CallKind.CAMBER_LESS, sail(30).get(0).kind());
    }

    @Test
    void theMomentComesFirst() {
        moment = new Estimate(80_000, 1_000);
        assertEquals(CallKind.POWER_UP, sail(21).get(0).kind());
    }

    @Test
    void overTheAimSheIsEasedWhateverTheSpeed() {
        moment = new Estimate(99_000, 1_000);
        share = 1.02;
        assertEquals(CallKind.EASE, sail(21).get(0).kind());
    }

    @Test
    void nothingThatRaisesTheMomentWhileItsUpperEndIsOverTheAim() {
        twist = degrees(50, 27, 34, 40);
        camber = degrees(5, 20, 25, 30);
        for (double value = 60_000; value < 130_000; value += 500) {
            moment = new Estimate(value, 2_000);
            state = LiveState.EYES_OUT;
            next();
            state = LiveState.ON_FOILS;
            twa = -twa;
            for (Call call : sail(25)) {
                boolean over = value + 2 * 2_000 > 95_000;
                assertTrue(!over || !call.kind().raisesMoment(), call.kind() + " at " + value);
            }
        }
    }

    @Test
    void withoutAMeasuredMomentNobodyIsToldToPowerUpOrEase() {
        camber = degrees(5, 20, 25, 30);
        for (Call call : sail(200)) {
            assertTrue(call.kind() != CallKind.POWER_UP && call.kind() != CallKind.EASE);
        }
        // Heeled to leeward of her aim she carries all she can.
        state = LiveState.EYES_OUT;
        next();
        state = LiveState.ON_FOILS;
        heel = Math.toRadians(3);
        twist = degrees(34, 27, 34, 40);
        twa = -0.9;
        assertEquals(Silence.NOTHING_TO_SAY, silenceAfter(40));
    }

    @Test
    void inATurnAndUntilSettledNothingIsSaid() {
        sail(19);
        state = LiveState.EYES_OUT;
        assertEquals(Silence.TURNING, next().silence());
        state = LiveState.ON_FOILS;
        assertEquals(Silence.SETTLING, silenceAfter(18));
        assertNotNull(next().call());
    }

    @Test
    void beforeTurnsAndStartsNearBoatsAndBoundariesNothingIsSaid() {
        Map<Silence, Around> cases = Map.of(
                Silence.TURN_AHEAD, new Around(Double.NaN, 5, Double.NaN, Double.NaN),
                Silence.START, new Around(60, Double.NaN, Double.NaN, Double.NaN),
                Silence.TRAFFIC, new Around(Double.NaN, Double.NaN, 59, Double.NaN),
                Silence.BOUNDARY, new Around(Double.NaN, Double.NaN, Double.NaN, 59));
        cases.forEach((silence, where) -> {
            around = where;
            assertEquals(silence, silenceAfter(60));
        });
        around = new Around(61, 6, 61, 61);
        assertEquals(1, sail(21).size());
    }

    @Test
    void badDataIsSaidAndSilencesWhatNeedsIt() {
        faults = List.of(new SensorFault(Sensor.WIND, SensorFault.Kind.SILENT, 4));
        assertEquals(Silence.DATA, silenceAfter(60));
        faults = List.of(new SensorFault(Sensor.TWIST, SensorFault.Kind.FROZEN, 4));
        twist = new Gauge(Double.NaN, 0.4, 0.5, 0.6);
        assertEquals(Silence.NOTHING_TO_SAY, silenceAfter(60));
        faults = List.of();
        share = Double.NaN;
        assertEquals(Silence.NO_TARGET, next().silence());
        state = LiveState.OFF_FOILS;
        assertEquals(Silence.NOT_FLYING, next().silence());
        state = LiveState.NO_DATA;
        assertEquals(Silence.DATA, next().silence());
    }

    @Test
    void aLimitIsATonesAndNoSentence() {
        sail(15);
        tone = Tone.LIMIT;
        assertEquals(Silence.LIMIT, silenceAfter(60));
        assertNull(caller.step(figures(), tone, around), "twice in one second");
    }

    @Test
    void tonesTellLimitsAtOnceAndTheUpperEndCounts() {
        Tones tones = new Tones(new Limits(
                6500,
                Math.toRadians(5),
                Math.toRadians(-2),
                0.2,
                1.5,
                -0.1,
                0.1,
                Units.fromKnots(50),
                null,
                null,
                null));
        assertEquals(Tone.NONE, tones.of(figures()));
        heel = Math.toRadians(-1.6);
        assertEquals(Tone.LIMIT, tones.of(figures()));
        heel = Math.toRadians(6.9);
        assertEquals(Tone.NONE, tones.of(figures()));
        heel = Math.toRadians(7.1);
        assertEquals(Tone.WINDWARD, tones.of(figures()));
        heel = Math.toRadians(4);
        moment = new Estimate(97_000, 1_600);
        assertEquals(Tone.LIMIT, tones.of(figures()));
        moment = new Estimate(97_000, 1_400);
        assertEquals(Tone.NONE, tones.of(figures()));
    }

    @Test
    void aTalkCardHasFiveWordsAtMostForEachCall() {
        Map<CallKind, String> words = new EnumMap<>(CallKind.class);
        for (CallKind kind : CallKind.values()) {
            words.put(kind, "twist {n} more");
        }
        Map<StartWord, String> starts = Map.of(StartWord.HOLD, "hold", StartWord.GO, "go");
        Call call = new Call(now, CallKind.TWIST_MORE, 4, 1, 0.2, 0.3, 0.4, 0.5);
        assertEquals("twist 4 more", new TalkCard(words, starts).say(call));
        words.put(CallKind.EASE, "one two three four five six");
        assertThrows(IllegalArgumentException.class, () -> new TalkCard(words, starts));
        words.remove(CallKind.EASE);
        assertThrows(IllegalArgumentException.class, () -> new TalkCard(words, starts));
        words.put(CallKind.EASE, "ease");
        assertThrows(IllegalArgumentException.class, () -> new TalkCard(words, Map.of()));
    }
}
