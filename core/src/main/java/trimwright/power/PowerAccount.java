package trimwright.power;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Handling;

/**
 * One account of the grinders' power over a lap: oil is served first, in the order of the boat file, the sheet has what is left.
 * Over a lap no more is spent than can be kept up for long, so that the last lap is as good as the first.
 *
 * @param fitness share of full fitness (-)
 * @param supply kept up for long by all grinders (W)
 * @param oil that straights take for oil (W)
 * @param sheet that straights take for hauling (W)
 * @param leftForSheet supply less oil (W), not below 0
 * @param turnWork of the grinders in one turn (J)
 * @param turns that a lap can pay for, whole ones (-)
 * @param rested seconds of straight after such a turn until each has {@link #RESTED} of the store back; infinite where straights
 *     let nothing back
 * @param steps of a turn, one after the other, all out from a full store
 * @param savings one a consumer, in the order of the steps
 */
public record PowerAccount(
        double fitness,
        double supply,
        double oil,
        double sheet,
        double leftForSheet,
        double turnWork,
        int turns,
        double rested,
        List<Step> steps,
        List<Saving> savings) {
    /** Share of the store that counts as rested (-); chosen. */
    public static final double RESTED = 0.9;

    /** More turns than any lap has; so many mean that power does not limit. */
    public static final int MOST_TURNS = 99;

    /** The sheet's name among the steps of a turn. */
    public static final String SHEET = "sheet";

    /** Share by which a consumer is thought to take less (-): chosen, what care in the handling may spare. */
    public static final double SPARED = 0.2;

    public PowerAccount {
        steps = List.copyOf(steps);
        savings = List.copyOf(savings);
    }

    /**
     * One consumer taking a fifth less, on straights and in turns.
     *
     * @param name oil user of the boat file, or {@link #SHEET}
     * @param spared work of all grinders over a lap of the account's own turns (J)
     * @param turns more that a lap then pays for (-), not rounded to whole ones
     */
    public record Saving(String name, double spared, double turns) {}

    /** The consumer of which a fifth is worth most turns; null where none takes anything. */
    public @Nullable Saving cheapestSaving() {
        return savings.stream()
                .filter(saving -> saving.turns() > 0)
                .max(Comparator.comparingDouble(Saving::turns))
                .orElse(null);
    }

    /**
     * One step of a turn.
     *
     * @param name oil user of the boat file, or {@link #SHEET}
     * @param work of all grinders (J)
     * @param done seconds after the turn's first step began when this one is done (s)
     */
    public record Step(String name, double work, double done) {}

    /** Whether straights alone take more than can be kept up. */
    public boolean isShort() {
        return oil + sheet > supply;
    }

    /**
     * The account of a lap.
     *
     * @param handling of the boat file
     * @param sheetEfficiency of the tackle (-)
     * @param moment mean turning moment of the wing while sheet is hauled on straights (N m)
     * @param lap length of a lap (s)
     * @param fitness share of full fitness (-), above 0
     */
    public static PowerAccount of(
            Handling handling, double sheetEfficiency, double moment, double lap, double fitness) {
        CriticalPower one = CriticalPower.of(handling.grinders()).atFitness(fitness);
        int count = handling.grinders().count();
        double supply = count * one.power();
        double oil = 0;
        double turnWork = 0;
        List<Step> steps = new ArrayList<>();
        for (Handling.OilUser user : handling.oilUsers()) {
            oil += user.straight() / handling.oilEfficiency();
            double work = user.turn() / handling.oilEfficiency();
            turnWork += work;
            steps.add(new Step(user.name(), work, one.secondsFor(turnWork / count)));
        }
        double sheet = moment * handling.sheetWork().straight() / sheetEfficiency;
        // From slack to the full moment, growing evenly: half of it on the way.
        double hauled = 0.5 * moment * handling.sheetWork().turn() / sheetEfficiency;
        turnWork += hauled;
        steps.add(new Step(SHEET, hauled, one.secondsFor(turnWork / count)));
        double spare = (supply - oil - sheet) * lap;
        double turns = turnWork > 0 ? Math.floor(Math.max(0, spare) / turnWork) : MOST_TURNS;
        return new PowerAccount(
                fitness,
                supply,
                oil,
                sheet,
                Math.max(0, supply - oil),
                turnWork,
                (int) Math.min(MOST_TURNS, turns),
                one.secondsToRefill(leftAfter(one, turnWork / count), (oil + sheet) / count, RESTED),
                steps,
                savings(handling, new Straights(supply, oil, sheet, lap), steps));
    }

    /** What straights take (W) of what is kept up (W) over a lap (s). */
    private record Straights(double supply, double oil, double sheet, double lap) {
        /** Turns that are paid for when so much less is taken on straights (W), a turn taking that work (J). */
        double turns(double less, double turnWork) {
            return turnWork > 0 ? Math.max(0, supply - oil - sheet + less) * lap / turnWork : MOST_TURNS;
        }
    }

    private static List<Saving> savings(Handling handling, Straights straights, List<Step> steps) {
        double turnWork = steps.stream().mapToDouble(Step::work).sum();
        double before = straights.turns(0, turnWork);
        List<Saving> savings = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            double straight = i < handling.oilUsers().size()
                    ? handling.oilUsers().get(i).straight() / handling.oilEfficiency()
                    : straights.sheet();
            double work = SPARED * step.work();
            savings.add(new Saving(
                    step.name(),
                    SPARED * straight * straights.lap() + work * Math.floor(before),
                    straights.turns(SPARED * straight, turnWork - work) - before));
        }
        return savings;
    }

    /** What an all-out work (J) from rest leaves of one person's store (J). */
    private static double leftAfter(CriticalPower one, double work) {
        double seconds = one.secondsFor(work);
        return seconds > 0 ? one.left(one.store(), work / seconds, seconds) : one.store();
    }
}
