package trimwright.raceday;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import trimwright.crew.Habits;
import trimwright.crew.Turning;
import trimwright.sim.BoatRun;
import trimwright.sim.Fleet;
import trimwright.sim.Race;
import trimwright.sim.Scenario;
import trimwright.sim.TrueState;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.units.Angles;
import trimwright.weather.AirVelocity;
import trimwright.weather.WindField;

/**
 * A long leg sailed once, and from it short branches without one cause. Wakes and habits are taken away for 20 s at a time,
 * one such window after the other; a turn is made at once. What is found belongs to the time at which the cause was away,
 * whenever it shows: nothing but that differs, so no chance of another race is in it.
 */
public final class BranchedLegs {
    /** Others' wakes. */
    public static final String WAKES = "wakes";
    /** Tacks and gybes. */
    public static final String TURNS = "turns";

    /** Length of a window (s), and time after it until both count as sailing alike again: chosen. */
    private static final int WINDOW = 20;

    private static final int SETTLING = 40;

    /** So long one flies or turns and the other does not until they count as sailing otherwise (s): chosen. */
    private static final int APART = 3;

    /** Wakes that take less are none (m/s). */
    private static final double CALM = 0.03;

    private final Race race;
    private final LongLegs.Way way;
    private final TargetBook book;
    private final WindField field;
    private final List<Fleet> fleets = new ArrayList<>();
    private final List<Fork> forks = new ArrayList<>();
    private final Map<Integer, List<Integer>> turnTimes = new HashMap<>();

    private record Fork(int boat, @Nullable String cause, int block, BoatRun run) {}

    private BranchedLegs(Race race, Scenario scenario, LongLegs.Way way, TargetBook book) {
        this.race = race;
        this.way = way;
        this.book = book;
        field = new WindField(scenario.weather(), scenario.seed());
    }

    /**
     * Sails from the day's zero and finds the pulses.
     *
     * @param from begin of what is judged (s)
     * @param to its end (s); the race is sailed on until nothing of it shows any more
     */
    static List<Pulse> of(Race race, Scenario scenario, LongLegs.Way way, TargetBook book, int from, int to) {
        BranchedLegs legs = new BranchedLegs(race, scenario, way, book);
        legs.sail(from, to);
        return legs.forks.parallelStream()
                .flatMap(fork -> legs.pulses(fork).stream())
                .toList();
    }

    /** How long is sailed for legs that are judged to that time (s). */
    static int sailed(int to) {
        return to + WINDOW + SETTLING;
    }

    private void sail(int from, int to) {
        int boats = race.runs().size();
        BoatRun[] before = new BoatRun[boats];
        for (int block = 0; block < RaceDay.blocks(sailed(to)); block++) {
            int now = block;
            double time = block * Race.BLOCK;
            // Boats do not see each other, but feel each other.
            Fleet fleet = new Fleet(List.of(), race.fleet().wakes());
            fleets.add(fleet);
            for (int i = 0; i < boats; i++) {
                BoatRun run = race.runs().get(i);
                Habits habits = run.entry().habits();
                if (time >= from && time < to && (time - from) % WINDOW == 0) {
                    forks.add(new Fork(i, null, block, run.branch(habits, Turning.SAILED)));
                }
                if (!run.isAtTurn()) {
                    before[i] = run.branch(habits, Turning.AT_ONCE);
                }
            }
            boolean[] turning = new boolean[boats];
            for (int i = 0; i < boats; i++) {
                turning[i] = race.runs().get(i).isAtTurn();
            }
            IntStream.range(0, boats).parallel().forEach(i -> race.advance(i, fleet, now));
            for (int i = 0; i < boats; i++) {
                if (!turning[i] && race.runs().get(i).isAtTurn()) {
                    turnTimes.computeIfAbsent(i, key -> new ArrayList<>()).add((int) Math.floor(time));
                    if (time >= from && time < to) {
                        forks.add(new Fork(i, TURNS, block, before[i]));
                    }
                }
            }
        }
    }

    private List<Pulse> pulses(Fork fork) {
        List<Pulse> found = new ArrayList<>();
        if (TURNS.equals(fork.cause())) {
            found.add(turnAtOnce(fork));
            return found;
        }
        if (isInWakes(fork)) {
            BoatRun run = fork.run().branch(fork.run().entry().habits(), Turning.SAILED);
            List<TrueState> states = new ArrayList<>();
            int back = fork.block() + (int) (WINDOW / Race.BLOCK);
            for (int block = fork.block(); block < back; block++) {
                run.advance(new Fleet(List.of(), List.of()), (block + 1) * Race.BLOCK);
            }
            goOn(run, back, back + (int) (SETTLING / Race.BLOCK));
            states.addAll(run.truth());
            found.add(pulse(fork, WAKES, states));
        }
        Habits habits = fork.run().entry().habits();
        if (!habits.equals(Habits.NONE)) {
            found.add(withoutHabits(fork, habits));
        }
        return found;
    }

    private Pulse withoutHabits(Fork fork, Habits habits) {
        int back = fork.block() + (int) (WINDOW / Race.BLOCK);
        BoatRun without = fork.run().branch(Habits.NONE, Turning.SAILED);
        goOn(without, fork.block(), back);
        List<TrueState> states = new ArrayList<>(without.truth());
        BoatRun with = without.branch(habits, Turning.SAILED);
        goOn(with, back, back + (int) (SETTLING / Race.BLOCK));
        states.addAll(with.truth());
        return pulse(fork, name(habits), states);
    }

    /** Until the order of the next turn, or as long as any window. */
    private Pulse turnAtOnce(Fork fork) {
        int start = (int) (fork.block() * Race.BLOCK);
        int end = turnTimes.getOrDefault(fork.boat(), List.of()).stream()
                .filter(time -> time > start + 5)
                .mapToInt(time -> time)
                .min()
                .orElse(start + WINDOW + SETTLING);
        end = Math.min(end, start + WINDOW + SETTLING);
        BoatRun run = fork.run().branch(fork.run().entry().habits(), Turning.AT_ONCE);
        int done = run.turns().size();
        int block = fork.block();
        while (run.turns().size() == done && block < fork.block() + 6) {
            run.advance(fleets.get(block), (block + 1) * Race.BLOCK);
            block++;
        }
        List<TrueState> states = new ArrayList<>(run.truth());
        BoatRun after = run.branch(run.entry().habits(), Turning.SAILED);
        goOn(after, block, (int) (end / Race.BLOCK));
        states.addAll(after.truth());
        return pulse(fork, TURNS, states);
    }

    private void goOn(BoatRun run, int from, int to) {
        for (int block = from; block < Math.min(to, fleets.size()); block++) {
            run.advance(fleets.get(block), (block + 1) * Race.BLOCK);
        }
    }

    private boolean isInWakes(Fork fork) {
        double from = fork.block() * Race.BLOCK;
        return race.runs().get(fork.boat()).truth().stream()
                .filter(state -> state.time() >= from && state.time() < from + WINDOW)
                .anyMatch(state -> Math.abs(state.wakeLoss()) > CALM);
    }

    private Pulse pulse(Fork fork, String cause, List<TrueState> branch) {
        List<TrueState> day = race.runs().get(fork.boat()).truth();
        List<Double> saved = new ArrayList<>();
        int from = (int) Math.round(branch.get(0).time());
        int otherwise = 0;
        int alike = -1;
        for (TrueState state : branch) {
            TrueState as = day.get((int) Math.round(state.time()));
            saved.add(progress(state) - progress(as));
            otherwise = state.flying() == as.flying() && state.turning() == as.turning() ? 0 : otherwise + 1;
            if (otherwise == APART && alike < 0 && !cause.equals(TURNS)) {
                alike = saved.size() - APART;
            }
        }
        return new Pulse(fork.boat(), cause, from, alike < 0 ? saved.size() : alike, saved);
    }

    /** Made good to the wind that blows without wakes, over that of the target in it (-). */
    private double progress(TrueState state) {
        AirVelocity air = field.at(0, 0, state.time());
        Target target =
                (way == LongLegs.Way.UPWIND ? book.findUpwind(air.speed()) : book.findDownwind(air.speed())).target();
        if (target == null) {
            throw new IllegalStateException("no target in " + air.speed() + " m/s");
        }
        // The course lies to leeward of the bow by the leeway, which is free of the tack.
        double leeway = Math.signum(Angles.signed(state.windFrom() - state.heading())) * state.leeway();
        double angle = Angles.signed(air.from() - state.heading()) + leeway;
        double sign = way == LongLegs.Way.UPWIND ? 1 : -1;
        return sign * state.speed() * Math.cos(angle) / target.velocityMadeGood();
    }

    /** Of what a crew does otherwise. */
    public static String name(Habits habits) {
        if (habits.momentShare() < 1) {
            return "moment";
        }
        if (habits.twist() != 0) {
            return "twist";
        }
        if (habits.rideHeight() != 0) {
            return "ride height";
        }
        return habits.lateEase() > 0 ? "late ease" : "late inversion";
    }
}
