package trimwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

class CuttingTest {
    private static final int RATE = 5;

    /** A course held, then a turn of the given rate to the next, and so on. */
    private record Course(double until, double degrees) {}

    private static DoubleUnaryOperator steer(double rate, Course... courses) {
        return t -> {
            double heading = courses[0].degrees;
            for (int k = 1; k < courses.length; k++) {
                double begun = t - courses[k - 1].until;
                if (begun <= 0) {
                    break;
                }
                double way = courses[k].degrees - courses[k - 1].degrees;
                heading = courses[k - 1].degrees + Math.signum(way) * Math.min(Math.abs(way), rate * begun);
            }
            return heading;
        };
    }

    private static WindTrack wind(BoatTrack track) {
        SessionClock clock = SessionClock.covering(track.startNanos(), track.endNanos(), RATE);
        return SailedWind.of(track, clock, null, WindOptions.DEFAULT);
    }

    private static Pieces cut(SyntheticTrack track) {
        return Cutting.of(wind(track.build()), new FoilingRule.NotTold());
    }

    private static double seconds(int i) {
        return i / (double) RATE;
    }

    /** Each wind direction puts the wrap of the compass somewhere else. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 45, 170, 315, 359})
    void tackIsFoundWithItsTimesAndCost(double twd) {
        double rate = 10;
        Pieces pieces = cut(new SyntheticTrack(240, RATE)
                .wind(t -> 8, t -> twd)
                .heading(steer(rate, new Course(120, twd - 45), new Course(240, twd + 45))));
        assertEquals(1, pieces.turns().size());
        Turn turn = pieces.turns().get(0);
        assertEquals(TurnKind.TACK, turn.kind());
        assertEquals(Tack.STARBOARD, turn.entryTack());
        // Leaves by 5 deg after half a second at 10 deg/s; 90 deg take 9 s, held within 4 deg a little sooner.
        assertEquals(120.5, seconds(turn.span().from()), 0.5);
        assertEquals(129, seconds(turn.span().to()), 1.0);
        assertEquals(90, Math.toDegrees(turn.rates().angle()), 1.5);
        assertEquals(rate, Math.toDegrees(turn.rates().greatest()), 0.5);
        // Speed stays at 10 m/s, so the tack gains ground by pointing at the wind.
        assertNotNull(turn.recovery());
        double gained = 0;
        for (double t = 120; t < 129; t += 0.001) {
            double angle = Math.toRadians(-45 + rate * (t - 120));
            gained += 10 * (Math.cos(angle) - Math.cos(Math.toRadians(45))) * 0.001;
        }
        assertTrue(turn.recovery().isComplete());
        assertEquals(-gained, turn.recovery().metresLost(), 1.0);
        assertEquals(1, pieces.legs().size());
        assertEquals(PointOfSail.UPWIND, pieces.legs().get(0).kind());
        assertEquals(2, pieces.phases().size());
        assertEquals(Tack.STARBOARD, pieces.phases().get(0).tack());
        assertEquals(Tack.PORT, pieces.phases().get(1).tack());
    }

    @Test
    void aSlowTackCostsWhatItLoses() {
        // Speed drops to 4 m/s at once for 20 s from the start of the tack, then is back.
        Pieces pieces = cut(new SyntheticTrack(240, RATE)
                .wind(t -> 8, t -> 0)
                .speed(t -> t > 120 && t < 140 ? 4 : 10)
                .heading(steer(10, new Course(120, -45), new Course(240, 45))));
        Turn turn = pieces.turns().get(0);
        assertNotNull(turn.recovery());
        assertEquals(140, seconds(turn.recovery().until()), 0.5);
        double lost = 0;
        for (double t = 120.5; t < 140; t += 0.001) {
            double angle = Math.toRadians(-45 + Math.min(90, 10 * (t - 120)));
            lost += (10 * Math.cos(Math.toRadians(45)) - 4 * Math.cos(angle)) * 0.001;
        }
        assertEquals(lost, turn.recovery().metresLost(), 1.5);
        assertEquals(4, turn.minimumSpeed(), 1e-9);
        assertEquals(10, turn.entrySpeed(), 0.5);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 90, 185, 340})
    void gybeBearAwayAndRoundUpAreTold(double twd) {
        Pieces pieces = cut(new SyntheticTrack(400, RATE)
                .wind(t -> 8, t -> twd)
                .heading(steer(
                        8,
                        new Course(90, twd - 45),
                        new Course(180, twd - 145),
                        new Course(280, twd - 215),
                        new Course(400, twd - 315))));
        assertEquals(
                List.of(TurnKind.BEAR_AWAY, TurnKind.GYBE, TurnKind.ROUND_UP),
                pieces.turns().stream().map(Turn::kind).toList());
        assertEquals(
                List.of(PointOfSail.UPWIND, PointOfSail.DOWNWIND, PointOfSail.UPWIND),
                pieces.legs().stream().map(Leg::kind).toList());
        assertNull(pieces.turns().get(0).recovery());
        assertNotNull(pieces.turns().get(1).recovery());
        assertEquals(4, pieces.phases().size());
    }

    /** As at a mark: hardly a second of straight sailing between the two, and the bow goes on the same way. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 130, 275})
    void twoTurnsInOneSweepPartWhereTheBowSlowsDown(double twd) {
        Pieces pieces = cut(new SyntheticTrack(240, RATE)
                .wind(t -> 8, t -> twd)
                .heading(steer(
                        10, new Course(100, twd - 45), new Course(110.5, twd - 140), new Course(240, twd - 220))));
        assertEquals(
                List.of(TurnKind.BEAR_AWAY, TurnKind.GYBE),
                pieces.turns().stream().map(Turn::kind).toList());
        assertEquals(109.5, seconds(pieces.turns().get(0).span().to()), 1.0);
        assertEquals(111, seconds(pieces.turns().get(1).span().from()), 1.0);
        // Three in one: the same two, then a round-up.
        Pieces more = cut(new SyntheticTrack(240, RATE)
                .wind(t -> 8, t -> twd)
                .heading(steer(
                        10,
                        new Course(100, twd - 45),
                        new Course(110.5, twd - 140),
                        new Course(119.5, twd - 220),
                        new Course(240, twd - 315))));
        assertEquals(
                List.of(TurnKind.BEAR_AWAY, TurnKind.GYBE, TurnKind.ROUND_UP),
                more.turns().stream().map(Turn::kind).toList());
    }

    @Test
    void aGybeThatSlowsDownInTheMiddleIsOne() {
        DoubleUnaryOperator heading = t -> t < 100
                ? -140
                : t < 103 ? -140 - 10 * (t - 100) : t < 104 ? -170 : Math.max(-220, -170 - 10 * (t - 104));
        Pieces pieces = cut(new SyntheticTrack(200, RATE).heading(heading));
        assertEquals(
                List.of(TurnKind.GYBE), pieces.turns().stream().map(Turn::kind).toList());
    }

    /** A tack, then bearing away further by 30 deg at 3.5 deg/s: neither part of the tack nor a turn of its own. */
    @Test
    void steeringForSpeedBehindATackIsNoTurn() {
        DoubleUnaryOperator heading =
                t -> t < 100 ? -45 : t < 106 ? -45 + 15 * (t - 100) : Math.min(75, 45 + 3.5 * (t - 106));
        Pieces pieces = cut(new SyntheticTrack(200, RATE).heading(heading));
        assertEquals(1, pieces.turns().size());
        assertEquals(TurnKind.TACK, pieces.turns().get(0).kind());
        assertEquals(106, seconds(pieces.turns().get(0).span().to()), 1.0);
    }

    /** Behind a tack 30 s at 6 m/s on an angle 20 deg wider, then 10 m/s at 45 deg as before: two phases, not three. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 200})
    void gatheringSpeedOffTheHeldAngleIsNoPhase(double twd) {
        DoubleUnaryOperator angle = t -> t < 100
                ? -45
                : t < 109
                        ? -45 + 10 * (t - 100)
                        : t < 119 ? 45 + 2 * (t - 109) : t < 149 ? 65 : Math.max(45, 65 - 2 * (t - 149));
        Pieces pieces = cut(new SyntheticTrack(300, RATE)
                .wind(t -> 8, t -> twd)
                .speed(t -> t > 102 && t < 149 ? 6 : 10)
                .heading(t -> twd + angle.applyAsDouble(t)));
        assertEquals(2, pieces.phases().size());
        Span second = pieces.phases().get(1).span();
        // Back within 8 deg at 155 s.
        assertEquals(155, seconds(second.from()), 2.0);
        assertEquals(300, seconds(second.to()), 1.0);
    }

    /** The same angle throughout, but a boat that is slow on it for half of the time: only at speed it can be judged. */
    @Test
    void aSlowBoatAtTheHeldAngleIsNotUpToSpeed() {
        Pieces pieces =
                cut(new SyntheticTrack(300, RATE).speed(t -> t < 100 ? 5 : 10).heading(t -> 135));
        assertEquals(1, pieces.phases().size());
        assertEquals(100, seconds(pieces.phases().get(0).span().from()), 2.0);
    }

    @Test
    void aShortGapInTheHeadingDoesNotPartAPhase() {
        SyntheticTrack gap = new SyntheticTrack(200, RATE).heading(t -> t > 100 && t < 106 ? Double.NaN : -45);
        SyntheticTrack longer = new SyntheticTrack(200, RATE).heading(t -> t > 100 && t < 115 ? Double.NaN : -45);
        assertEquals(1, cut(gap).phases().size());
        assertEquals(2, cut(longer).phases().size());
    }

    @Test
    void aWindShiftThatCrossesABorderIsNoTurn() {
        Pieces pieces = cut(new SyntheticTrack(400, RATE)
                .wind(t -> 8, t -> t < 150 ? 0 : Math.min(60, (t - 150) * 1.0))
                .heading(t -> -60));
        assertEquals(List.of(), pieces.turns());
        assertEquals(
                List.of(PointOfSail.UPWIND, PointOfSail.DOWNWIND),
                pieces.legs().stream().map(Leg::kind).toList());
    }

    @Test
    void aCircleIsNoTurnAndNoPhase() {
        Pieces pieces =
                cut(new SyntheticTrack(300, RATE).heading(steer(8, new Course(120, -45), new Course(300, 315))));
        assertEquals(List.of(), pieces.turns());
        for (Phase phase : pieces.phases()) {
            assertTrue(
                    seconds(phase.span().to()) <= 121.5 || seconds(phase.span().from()) >= 163);
        }
    }

    @Test
    void aLuffAndBackIsNoTurn() {
        Pieces pieces = cut(new SyntheticTrack(200, RATE)
                .heading(steer(10, new Course(100, -45), new Course(104, -15), new Course(200, -45))));
        assertEquals(List.of(), pieces.turns());
    }

    @Test
    void compassNoiseAndYawMoveTheTurnLittle() {
        Random random = new Random(11);
        double[] noise = random.doubles(3000, -2, 2).toArray();
        DoubleUnaryOperator course = steer(12, new Course(120, 315), new Course(240, 405));
        Pieces pieces = cut(new SyntheticTrack(240, RATE)
                .heading(t -> course.applyAsDouble(t) + noise[(int) Math.round(t * RATE)] + 1.5 * Math.sin(t)));
        assertEquals(1, pieces.turns().size());
        Span span = pieces.turns().get(0).span();
        assertEquals(120.5, seconds(span.from()), 1.0);
        assertEquals(127.5, seconds(span.to()), 1.5);
    }

    @Test
    void aPhaseEndsWhereTheWindAngleLeavesItsMedian() {
        // A slow bear-off of 24 deg on a reach: one phase cannot hold it all.
        Pieces pieces =
                cut(new SyntheticTrack(300, RATE).heading(t -> -80 - (t < 100 ? 0 : Math.min(24, (t - 100) * 0.5))));
        assertEquals(1, pieces.legs().size());
        assertTrue(pieces.phases().size() >= 2);
        for (Phase phase : pieces.phases()) {
            assertTrue(phase.span().length() >= 10 * RATE);
        }
    }

    @Test
    void spellsOffTheFoilsAreFoundByHeightAndTouchesAreNot() {
        WindTrack track = wind(new SyntheticTrack(120, RATE)
                .heading(t -> -45)
                .with(
                        Paths.RIDE_HEIGHT,
                        t -> t > 40 && t <= 60 ? 0.0 : t > 60 && t < 63 ? 0.1 : t > 90 && t < 91 ? 0.0 : 1.0)
                .build());
        List<OffFoil> spells =
                Cutting.of(track, FoilingRule.ByRideHeight.DEFAULT).offFoil();
        assertEquals(1, spells.size());
        assertEquals(40, seconds(spells.get(0).span().from()), 0.4);
        assertEquals(63, seconds(spells.get(0).span().to()), 0.4);
        assertEquals(List.of(), Cutting.of(track, new FoilingRule.NotTold()).offFoil());
    }

    @Test
    void aBoatAtRestSailsNoLeg() {
        Pieces pieces = cut(new SyntheticTrack(200, RATE).heading(t -> -45).speed(t -> 0.3));
        assertEquals(List.of(), pieces.legs());
        assertEquals(List.of(), pieces.phases());
    }
}
