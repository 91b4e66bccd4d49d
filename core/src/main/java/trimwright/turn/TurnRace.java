package trimwright.turn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Candidates sail on in gusts that their search has not seen, fewer and fewer of them: what looked best in few turns was lucky
 * in part, and only many fresh turns tell a chance of a few per cent.
 */
final class TurnRace {
    /** How many candidates sail each round, and from where to where: chosen. */
    private static final int[] RUNNERS = {24, 8, 3};

    private static final int[] TURNS = {16, 48, 240};

    /** Turns that a race sails at most. */
    static final int MOST = 24 * 16 + 8 * 32 + 3 * 192;

    /** First number of a race: the search has numbers below, the final statement numbers above. */
    private static final long FRESH = 501;

    private final TurnSetup setup;
    private final TurnSource source;
    private final ToDoubleFunction<TurnTally> price;

    /** Moves with all turns that they have sailed in the race. */
    record Runner(TurnMoves moves, TurnTally tally) {}

    TurnRace(TurnSetup setup, TurnSource source, ToDoubleFunction<TurnTally> price) {
        this.setup = setup;
        this.source = source;
        this.price = price;
    }

    /**
     * Who is left after that many rounds, best first.
     *
     * @param candidates best first
     * @param rounds 1 to 3
     */
    List<Runner> sail(List<TurnMoves> candidates, int rounds) {
        List<Runner> runners = new ArrayList<>();
        for (TurnMoves moves : candidates) {
            runners.add(new Runner(moves, TurnTally.of(setup, List.of())));
        }
        for (int round = 0; round < rounds; round++) {
            List<Runner> next = new ArrayList<>();
            for (Runner runner : runners.subList(0, Math.min(RUNNERS[round], runners.size()))) {
                next.add(further(runner, TURNS[round]));
            }
            next.sort(Comparator.comparingDouble(runner -> price.applyAsDouble(runner.tally())));
            runners = next;
        }
        return runners;
    }

    private Runner further(Runner runner, int until) {
        List<TurnOutcome> turns = new ArrayList<>(runner.tally().turns());
        int sailed = turns.size();
        turns.addAll(source.sail(runner.moves(), FRESH + sailed, until - sailed));
        return new Runner(runner.moves(), TurnTally.of(setup, turns));
    }

    /** The one with the fewest metres whose chance surely is no more than that; null where none is. */
    static @Nullable Runner surest(List<Runner> runners, double chance) {
        return runners.stream()
                .filter(runner -> runner.tally().spoiltShare().most() <= chance)
                .min(Comparator.comparingDouble(runner -> runner.tally().metres()))
                .orElse(null);
    }
}
