package trimwright.turn;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * What many turns came to.
 *
 * @param turns each
 * @param limit share of turns that passed a limit of the boat file (-)
 * @param touched share in which a hull touched the water (-)
 * @param floor share in which she heeled to windward past the floor (-)
 * @param capsized share that went over (-)
 * @param spoilt share in which any of these happened (-); a hull that touches counts where the turn is meant to stay on the foils
 */
public record TurnTally(
        List<TurnOutcome> turns, double limit, double touched, double floor, double capsized, double spoilt) {
    /** Beyond the largest windward heel in straight sailing by this a turn has gone past the floor (rad): chosen. */
    private static final double SPARE = Math.toRadians(10);

    /** Metres that a capsize counts beyond what was lost by then: chosen, more than any turn costs. */
    private static final double CAPSIZE = 500;

    /** Time past a limit that counts (s): chosen, shorter than a gauge would show. */
    private static final double SEEN = 0.2;

    private static final Predicate<TurnOutcome> LIMIT = turn -> turn.elevator() > SEEN || turn.sheet() > SEEN;

    /** Of turns of one setup. */
    public static TurnTally of(TurnSetup setup, List<TurnOutcome> turns) {
        return new TurnTally(
                turns,
                share(turns, LIMIT),
                share(turns, TurnOutcome::touched),
                share(turns, isPastFloor(setup)),
                share(turns, TurnOutcome::capsized),
                share(turns, isSpoilt(setup)));
    }

    private static Predicate<TurnOutcome> isPastFloor(TurnSetup setup) {
        double floor = floor(setup);
        return turn -> turn.windward() > floor;
    }

    /** Which turns of a setup are spoilt. */
    static Predicate<TurnOutcome> isSpoilt(TurnSetup setup) {
        Predicate<TurnOutcome> touch = turn -> setup.touching() == TurnSetup.Touching.SPOILS && turn.touched();
        return LIMIT.or(isPastFloor(setup)).or(touch).or(TurnOutcome::capsized);
    }

    /** Windward heel beyond which a turn is spoilt (rad). */
    static double floor(TurnSetup setup) {
        return setup.boat().limits().heelMax() + SPARE;
    }

    public TurnTally {
        turns = List.copyOf(turns);
    }

    /** Mean metres lost; a capsize counts half a kilometre more, so that none is ever worth it. */
    public double metres() {
        return mean(turn -> turn.metres() + (turn.capsized() ? CAPSIZE : 0));
    }

    /** Mean of a figure over the turns that have it; NaN where none has. */
    public double mean(ToDoubleFunction<TurnOutcome> figure) {
        return turns.stream()
                .mapToDouble(figure)
                .filter(value -> !Double.isNaN(value))
                .average()
                .orElse(Double.NaN);
    }

    /** The figure under which that share of the turns stays that have it; NaN where none has. */
    public double quantile(ToDoubleFunction<TurnOutcome> figure, double share) {
        double[] sorted = turns.stream()
                .mapToDouble(figure)
                .filter(value -> !Double.isNaN(value))
                .sorted()
                .toArray();
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.min(sorted.length - 1, share * sorted.length)];
    }

    /** The chance of a spoilt turn as these turns show it. */
    public SpoiltShare spoiltShare() {
        return SpoiltShare.of((int) Math.round(spoilt * turns.size()), turns.size());
    }

    private static double share(List<TurnOutcome> turns, Predicate<TurnOutcome> which) {
        return (double) turns.stream().filter(which).count() / Math.max(1, turns.size());
    }
}
