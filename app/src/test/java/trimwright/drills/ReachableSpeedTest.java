package trimwright.drills;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.call.Around;
import trimwright.call.CallAnswer;
import trimwright.call.CallRules;
import trimwright.call.Caller;
import trimwright.call.Tone;
import trimwright.crew.ComputedHand;
import trimwright.crew.Habits;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.SailingAims;
import trimwright.live.LiveBoat;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.raceday.AimsCard;
import trimwright.response.ResponseFit;
import trimwright.response.SpeedResponse;
import trimwright.segment.FoilingRule;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.units.Units;
import trimwright.weather.AirVelocity;
import trimwright.weather.MovingAir;

/** A puff does not read as slow: a perfectly trimmed boat in step gusts, from her instruments to the figure on the page. */
class ReachableSpeedTest {
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final Boat BOAT = FILE.boat();
    private static final WingSpec WING = BOAT.wings().get(0);
    private static final TargetBook BOOK = book();
    private static final SailingAims AIMS = AimsCard.of(BOOK);
    private static final SpeedResponse RESPONSE = response();

    @Test
    void aStepGustNeverShowsAPerfectlyTrimmedBoatTwoPerCentUnderAndNoCallFollows() {
        for (Way way : List.of(Way.UPWIND, Way.DOWNWIND)) {
            for (double wind : new double[] {14, 18}) {
                for (double gust : new double[] {3, 6}) {
                    double[] shares = shares(way, Units.fromKnots(wind), Units.fromKnots(gust));
                    String of = way + " " + wind + " kn, gust " + gust + " kn: ";
                    assertTrue(shares[0] >= 0.98, of + "least " + shares[0]);
                    // Nor is the figure blunt: some six per cent over is what the one-sided fit costs.
                    assertTrue(shares[1] <= 1.065, of + "most " + shares[1]);
                    assertEquals(0, shares[2], of + "calls");
                }
            }
        }
    }

    /** Least and largest share from the step on, and how many calls there were in all. */
    private static double[] shares(Way way, double wind, double gust) {
        MovingAir air = (north, east, time) -> new AirVelocity(-(time < 90 ? wind : wind + gust), 0);
        LiveBoat live = new LiveBoat(BOAT, BOOK, FoilingRule.BySpeed.above(BOOK.slowestFoiling()), RESPONSE);
        LiveSail sail = new LiveSail(
                BOAT, BOAT, WING, AIMS, air, wind, way, new ComputedHand(WING, Habits.NONE, 1), live, 0, 1);
        Caller caller = new Caller(CallRules.DEFAULT);
        int calls = 0;
        double least = 2;
        double most = 0;
        while (sail.time() < 180) {
            sail.step();
            if (Math.round(sail.time() / LiveSail.STEP) % 50 == 0) {
                CallAnswer answer = caller.step(sail.figures(), Tone.NONE, Around.NOTHING_KNOWN);
                calls += answer == null || answer.call() == null ? 0 : 1;
                double share = sail.figures().aim().share().value();
                if (sail.time() >= 90 && !Double.isNaN(share)) {
                    least = Math.min(least, share);
                    most = Math.max(most, share);
                }
            }
        }
        return new double[] {least, most, calls};
    }

    private static SpeedResponse response() {
        SpeedResponse response = ResponseFit.of(BOAT, WING, AIMS, AirState.STANDARD, LiveSail.WATER);
        assertNotNull(response);
        return response;
    }

    private static TargetBook book() {
        try {
            return TargetRun.of(TargetRequest.of(FILE, WING), Progress.NONE);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
