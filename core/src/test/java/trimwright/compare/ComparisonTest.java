package trimwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trimwright.segment.Cutting;
import trimwright.segment.FoilingRule;
import trimwright.segment.Pieces;
import trimwright.segment.PointOfSail;
import trimwright.target.Attitude;
import trimwright.target.Band;
import trimwright.target.Branch;
import trimwright.target.Loads;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.target.TrimBands;
import trimwright.target.TrimSetting;
import trimwright.track.Paths;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.SyntheticTrack;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

class ComparisonTest {
    private static final int RATE = 5;
    private static final double COS_45 = Math.cos(Math.toRadians(45));

    private static WindTrack wind(SyntheticTrack synthetic) {
        var track = synthetic.build();
        SessionClock clock = SessionClock.covering(track.startNanos(), track.endNanos(), RATE);
        return SailedWind.of(track, clock, null, WindOptions.DEFAULT);
    }

    private static Pieces cut(WindTrack track) {
        return Cutting.of(track, FoilingRule.ByRideHeight.DEFAULT);
    }

    /** A book in which the boat makes 10 m/s at every angle of every wind, best VMG at 45 and 135 deg. */
    static TargetBook tenEverywhere() {
        List<Double> winds = List.of(4.0, 8.0, 12.0);
        List<Double> angles = new ArrayList<>();
        for (int degrees = 30; degrees <= 150; degrees += 10) {
            angles.add(Math.toRadians(degrees));
        }
        List<TargetPoint> points = new ArrayList<>();
        for (double wind : winds) {
            for (double angle : angles) {
                points.add(point(TargetMode.ANGLE, wind, angle));
            }
            points.add(point(TargetMode.UPWIND, wind, Math.toRadians(45)));
            points.add(point(TargetMode.DOWNWIND, wind, Math.toRadians(135)));
        }
        return new TargetBook("test", "test", "test", new TargetGrid(winds, angles), points);
    }

    private static TargetPoint point(TargetMode mode, double wind, double angle) {
        Band none = new Band(0, 0);
        Target target = new Target(
                10,
                10 * Math.abs(Math.cos(angle)),
                0.3,
                15,
                new TrimSetting(0, 0, 0.5, 0),
                new TrimBands(none, none, none),
                new Attitude(0, 1, 0, 0, 0, 0, 0, 0),
                new Loads(0, 0, 0, 1, 0, 0),
                Set.of(),
                Set.of());
        return TargetPoint.solved(mode, Branch.FOILING, wind, angle, target);
    }

    private static double loss(LegLedger ledger, Cause cause) {
        return ledger.lines().stream()
                .filter(line -> line.cause() == cause)
                .mapToDouble(LegLedger.Line::loss)
                .sum();
    }

    private static void assertAddsUp(LegLedger ledger) {
        double sum = ledger.lines().stream().mapToDouble(LegLedger.Line::loss).sum();
        assertEquals(ledger.total(), sum, 1e-9 * Math.max(1, Math.abs(ledger.total())));
    }

    @Test
    void aSpellOffTheFoilsCostsItsOwnLine() {
        WindTrack track = wind(new SyntheticTrack(300, RATE)
                .heading(t -> -45)
                .speed(t -> t > 150 && t <= 170 ? 4 : 10)
                .with(Paths.RIDE_HEIGHT, t -> t > 150 && t <= 170 ? 0 : 1));
        Pieces pieces = cut(track);
        LegLedger ledger = Comparison.of(track, pieces, new TargetReference(tenEverywhere()))
                .ledgers()
                .get(0);
        assertAddsUp(ledger);
        // The spell is no steady sailing, so the boat's own progress is that of the rest of the leg.
        assertEquals(20 * (1 - 0.4), loss(ledger, Cause.OFF_FOIL), 0.3);
        assertEquals(12, ledger.total(), 0.3);
        assertEquals(0, loss(ledger, Cause.TURNS_FREE), 0);
    }

    @Test
    void speedGatheredAfterASpellOffTheFoilsIsTheSpells() {
        // Down for 20 s, then 20 s in the air at 6 m/s, which is no steady sailing.
        WindTrack track = wind(new SyntheticTrack(300, RATE)
                .heading(t -> -45)
                .speed(t -> t > 150 && t <= 170 ? 4 : t > 170 && t <= 190 ? 6 : 10)
                .with(Paths.RIDE_HEIGHT, t -> t > 150 && t <= 170 ? 0 : 1));
        LegLedger ledger = Comparison.of(track, cut(track), new TargetReference(tenEverywhere()))
                .ledgers()
                .get(0);
        assertAddsUp(ledger);
        assertEquals(20 * (1 - 0.4) + 20 * (1 - 0.6), loss(ledger, Cause.OFF_FOIL), 0.4);
    }

    @Test
    void aSlowTackCostsItsOwnLineAndTimeToTheReference() {
        WindTrack track = wind(new SyntheticTrack(300, RATE)
                .heading(t -> t < 150 ? -45 : Math.min(45, -45 + 10 * (t - 150)))
                .speed(t -> t > 150 && t < 172 ? 5 : 10)
                .with(Paths.RIDE_HEIGHT, t -> 1));
        Pieces pieces = cut(track);
        Comparison comparison = Comparison.of(track, pieces, new TargetReference(tenEverywhere()));
        LegLedger ledger = comparison.ledgers().get(0);
        assertAddsUp(ledger);
        double lost = 0;
        double lostSteady = 0;
        for (double t = 150; t < 172; t += 0.001) {
            double angle = Math.toRadians(-45 + Math.min(90, 10 * (t - 150)));
            double loss = (1 - 5 * Math.cos(angle) / (10 * COS_45)) * 0.001;
            lost += loss;
            lostSteady += t > 159 ? loss : 0;
        }
        assertEquals(lost, ledger.total(), 0.3);
        // The seconds after the turn are a phase too and pull steady progress down by their own loss.
        double steady = 1 - lostSteady / 291;
        assertEquals(lost - 22 * (1 - steady), loss(ledger, Cause.TURNS_FREE), 0.5);
        Double back = comparison.secondsToReference().get(0);
        assertNotNull(back);
        assertEquals(21.5, back, 0.7);
    }

    @Test
    void whoComesDownInATackIsDownBecauseOfIt() {
        // Down from the middle of the tack until long after it.
        WindTrack track = wind(new SyntheticTrack(300, RATE)
                .heading(t -> t < 150 ? -45 : Math.min(45, -45 + 10 * (t - 150)))
                .speed(t -> t > 150 && t < 190 ? 5 : 10)
                .with(Paths.RIDE_HEIGHT, t -> t > 154 && t < 190 ? 0 : 1));
        LegLedger ledger = Comparison.of(track, cut(track), new TargetReference(tenEverywhere()))
                .ledgers()
                .get(0);
        assertAddsUp(ledger);
        assertEquals(0, loss(ledger, Cause.OFF_FOIL), 0);
        // 31 s at half of the progress behind the tack, less what the boat lacks when it sails steadily, and the tack
        // itself.
        assertTrue(loss(ledger, Cause.TURNS_FREE) > 15, "turns " + loss(ledger, Cause.TURNS_FREE));
    }

    @Test
    void sailingTooLowCostsTheAngleLineAndSailingSlowTheRemainder() {
        WindTrack track = wind(new SyntheticTrack(200, RATE).heading(t -> -60).speed(t -> 9));
        Pieces pieces = cut(track);
        Comparison comparison = Comparison.of(track, pieces, new TargetReference(tenEverywhere()));
        LegLedger ledger = comparison.ledgers().get(0);
        assertAddsUp(ledger);
        double seconds = 1001.0 / RATE;
        assertEquals(seconds * (10 * COS_45 - 5) / (10 * COS_45), loss(ledger, Cause.ANGLE), 0.01);
        assertEquals(seconds * 0.5 / (10 * COS_45), loss(ledger, Cause.REMAINING), 0.01);
        PhaseResult phase = comparison.phases().get(0);
        assertNotNull(phase.difference());
        assertEquals(4.5 - 10 * COS_45, phase.difference().mean(), 1e-6);
    }

    @Test
    void aReachIsJudgedAlongTheWayToTheMark() {
        // Two courses 20 deg either side of the way: each makes good 9.4 m/s of 10.
        WindTrack track = wind(new SyntheticTrack(400, RATE).heading(t -> t < 200 ? -70 : -110));
        LegLedger ledger = Comparison.of(track, cut(track), new TargetReference(tenEverywhere()))
                .ledgers()
                .get(0);
        assertEquals(PointOfSail.REACHING, ledger.leg().kind());
        assertAddsUp(ledger);
        assertEquals(400 * (1 - Math.cos(Math.toRadians(20))), ledger.total(), 0.5);
    }

    @Test
    void timeWithoutReferenceIsCountedWholeAndNamed() {
        WindTrack track = wind(new SyntheticTrack(200, RATE).heading(t -> -45).wind(t -> 20, t -> 0));
        Comparison comparison = Comparison.of(track, cut(track), new TargetReference(tenEverywhere()));
        LegLedger ledger = comparison.ledgers().get(0);
        assertAddsUp(ledger);
        assertEquals(1001.0 / RATE, loss(ledger, Cause.UNJUDGED), 1e-9);
        assertEquals(
                Set.of(CompareCaveat.NO_REFERENCE), comparison.phases().get(0).caveats());
        assertNull(comparison.phases().get(0).difference());
    }

    @Test
    void ownBestIsTheNinetiethPercentileOfSteadyVmg() {
        Random random = new Random(2);
        double[] speeds = random.doubles(1001, 8, 12).toArray();
        WindTrack track =
                wind(new SyntheticTrack(200, RATE).heading(t -> -45).speed(t -> speeds[(int) Math.round(t * RATE)]));
        Pieces pieces = cut(track);
        Reference own = OwnBestReference.of(track, pieces.phases());
        // 8 m/s are 15.55 kn: the bin of 16.
        assertEquals(11.6 * COS_45, own.rate(PointOfSail.UPWIND, 8, 0).value(), 0.1);
        assertTrue(Double.isNaN(own.rate(PointOfSail.UPWIND, 9, 0).value()));
        assertTrue(Double.isNaN(own.rate(PointOfSail.DOWNWIND, 8, 0).value()));
        assertEquals("own_best", Comparison.of(track, pieces, own).reference());
    }

    @Test
    void ownBestNeedsSixtySecondsOfAWind() {
        WindTrack track = wind(new SyntheticTrack(150, RATE).heading(t -> -45).wind(t -> t < 100 ? 8 : 12, t -> 0));
        Reference own = OwnBestReference.of(track, cut(track).phases());
        assertTrue(own.rate(PointOfSail.UPWIND, 8, 0).value() > 0);
        assertTrue(Double.isNaN(own.rate(PointOfSail.UPWIND, 12, 0).value()));
    }
}
