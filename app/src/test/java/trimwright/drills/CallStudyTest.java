package trimwright.drills;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Crew;
import trimwright.boat.Limits;
import trimwright.boat.Mass;
import trimwright.boat.Windage;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.call.Around;
import trimwright.call.Call;
import trimwright.call.CallAnswer;
import trimwright.call.CallKind;
import trimwright.call.CallRules;
import trimwright.call.Caller;
import trimwright.call.Tone;
import trimwright.call.Tones;
import trimwright.chance.RandomStream;
import trimwright.crew.ComputedHand;
import trimwright.crew.FeelingHand;
import trimwright.crew.Habits;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.SailingAims;
import trimwright.crew.Sight;
import trimwright.crew.WingHand;
import trimwright.live.LiveBoat;
import trimwright.live.LiveFigures;
import trimwright.practice.Bounds;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.raceday.AimsCard;
import trimwright.response.ResponseFit;
import trimwright.response.SpeedResponse;
import trimwright.segment.FoilingRule;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.units.Units;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;
import trimwright.weather.WindField;

/**
 * What calls are worth to a hand that sails by feel: four paired arms in the same wind. Run with -Dtrimwright.calls=seeds,
 * the first one by -Dtrimwright.calls.first; it prints the table of docs/validation.md.
 */
@EnabledIfSystemProperty(named = "trimwright.calls", matches = "\\d+")
class CallStudyTest {
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final Boat BOAT = FILE.boat();
    private static final WingSpec WING = BOAT.wings().get(0);

    /** A leg's length, and what of it counts (s): the hands have settled. */
    private static final double LENGTH = 360;

    private static final double COUNTS = 40;

    /** Time to say a sentence, and from its end to the hand's move (s). */
    private static final double SENTENCE = 1.5;

    private static final double DELAY = 1.5;

    private final TargetBook book = book();
    private final SailingAims aims = AimsCard.of(book);
    private final @Nullable SpeedResponse response =
            ResponseFit.of(BOAT, WING, aims, AirState.STANDARD, LiveSail.WATER);

    private enum Arm {
        NONE,
        CALLS,
        PLACEBO,
        KNOWS
    }

    private record Outcome(double lost, double touched, double over, int calls) {}

    @Test
    void aHandWithAHabitLosesLessWithCalls() {
        int seeds = Integer.getInteger("trimwright.calls");
        int first = Integer.getInteger("trimwright.calls.first", 1);
        for (double habit : new double[] {-6, 0}) {
            double[] sums = new double[Arm.values().length];
            int better = 0;
            int placebo = 0;
            for (int seed = first; seed < first + seeds; seed++) {
                List<Outcome> outcomes = new ArrayList<>();
                for (Arm arm : Arm.values()) {
                    Outcome outcome = sail(arm, habit, seed);
                    outcomes.add(outcome);
                    sums[arm.ordinal()] += outcome.lost() / seeds;
                    System.out.printf(
                            Locale.ROOT,
                            "habit %.0f deg, seed %d, %s: %.2f s lost, %.1f s touched, %.1f s over limits, %d calls%n",
                            habit,
                            seed,
                            arm,
                            outcome.lost(),
                            outcome.touched(),
                            outcome.over(),
                            outcome.calls());
                }
                better += outcomes.get(1).lost() < outcomes.get(0).lost() ? 1 : 0;
                placebo += outcomes.get(2).lost() < outcomes.get(0).lost() ? 1 : 0;
            }
            System.out.printf(
                    Locale.ROOT,
                    "habit %.0f deg: none %.2f, calls %.2f, placebo %.2f, knows %.2f s lost of %.0f; better with calls %d, placebo %d of %d%n",
                    habit,
                    sums[0],
                    sums[1],
                    sums[2],
                    sums[3],
                    LENGTH - COUNTS,
                    better,
                    placebo,
                    seeds);
            assertTrue(sums[1] < sums[0], "calls did not help");
        }
    }

    private Outcome sail(Arm arm, double habitDeg, long seed) {
        RandomStream draw = RandomStream.of(seed, "boat and wind of a day with calls");
        double wind = Units.fromKnots(14 + 4 * draw.uniform());
        // Another spectrum than the drills have, and a boat some per cent off the file that crew and Live go by.
        Boat sailed = perturbed(draw);
        WeatherSpec weather =
                new WeatherSpec(wind, 0, 10, 0.06, TurbulenceSpectrum.VON_KARMAN, Math.toRadians(3), 0.03, 0.08);
        Habits habits = new Habits(1, 0.5, Math.toRadians(habitDeg), 0, 0);
        WingHand base = arm == Arm.KNOWS ? new ComputedHand(WING, Habits.NONE, 1) : new FeelingHand(WING, habits, 1);
        CalledHand hand = new CalledHand(base, WING);
        LiveBoat live = new LiveBoat(BOAT, book, FoilingRule.BySpeed.above(book.slowestFoiling()), response);
        LiveSail sail = new LiveSail(
                sailed, BOAT, WING, aims, new WindField(weather, seed), wind, Way.UPWIND, hand, live, 1, seed);
        Caller caller = new Caller(CallRules.DEFAULT);
        Tones tones = new Tones(BOAT.limits());
        Bounds bounds = new Bounds(sailed, WING);
        RandomStream chance = RandomStream.of(seed, "placebo");
        double lost = 0;
        double touched = 0;
        double over = 0;
        int calls = 0;
        while (sail.time() < LENGTH) {
            Sight sight = sail.step();
            if (sail.time() > COUNTS) {
                lost += LiveSail.STEP * lossRate(sight);
                touched += sight.loads().hullLift() > 0 ? LiveSail.STEP : 0;
                over += bounds.isPastElevator(sight.loads()) || bounds.isPastSheet(sight.loads()) ? LiveSail.STEP : 0;
            }
            if (Math.round(sail.time() / LiveSail.STEP) % 50 == 0) {
                LiveFigures figures = live.figures();
                Tone tone = tones.of(figures);
                CallAnswer answer = caller.step(figures, tone, Around.NOTHING_KNOWN);
                Call call = answer == null ? null : answer.call();
                if (call != null && (arm == Arm.CALLS || arm == Arm.PLACEBO)) {
                    calls++;
                    hand.hear(arm == Arm.CALLS ? call : random(call, chance), sail.time() + SENTENCE + DELAY);
                }
            }
        }
        return new Outcome(lost, touched, over, calls);
    }

    /** Share of the card's best progress against the wind, as the crew knows it, that is not made (-). */
    private double lossRate(Sight sight) {
        double best = aims.upwindAngle(sight.windSpeed());
        double promised = aims.at(sight.windSpeed(), best).speed() * StrictMath.cos(best);
        return 1 - sight.speed() * StrictMath.cos(sight.windFrom() - sight.course()) / promised;
    }

    /** Mass, windage and what rights the boat, each off by a share with a standard deviation of 3 per cent. */
    private static Boat perturbed(RandomStream draw) {
        double mass = 1 + 0.03 * draw.normal();
        double drag = 1 + 0.03 * draw.normal();
        double moment = 1 + 0.03 * draw.normal();
        Limits limits = BOAT.limits();
        return new Boat(
                BOAT.name(),
                BOAT.title(),
                BOAT.hulls(),
                new Mass(
                        mass * BOAT.platform().mass(),
                        BOAT.platform().x(),
                        BOAT.platform().height()),
                new Crew(
                        BOAT.crew().count(),
                        BOAT.crew().massEach(),
                        BOAT.crew().x(),
                        moment * BOAT.crew().yMax(),
                        BOAT.crew().height()),
                BOAT.wings(),
                BOAT.foils(),
                BOAT.foilSets(),
                new Windage(
                        drag * BOAT.windage().areaAhead(),
                        drag * BOAT.windage().areaAbeam(),
                        BOAT.windage().height(),
                        BOAT.windage().x()),
                limits.withElevatorDownForce(moment * limits.elevatorDownForce()),
                BOAT.windSensor(),
                BOAT.antenna(),
                BOAT.handling());
    }

    /** A call at the same instant that asks for anything. */
    private static Call random(Call call, RandomStream chance) {
        CallKind[] kinds = {CallKind.CAMBER_MORE, CallKind.CAMBER_LESS, CallKind.TWIST_MORE, CallKind.TWIST_LESS};
        CallKind kind = kinds[(int) (chance.uniform() * kinds.length)];
        return new Call(
                call.timeNanos(),
                kind,
                1 + (int) (chance.uniform() * 5),
                call.lost(),
                call.lostError(),
                call.value(),
                call.aim(),
                call.promise());
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
