package trimwright.drills;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.LongStream;
import trimwright.prepare.InParallel;
import trimwright.turn.TurnChance;
import trimwright.turn.TurnOutcome;
import trimwright.turn.TurnSetup;
import trimwright.turn.TurnStart;

/**
 * Boats that wait for the driver's word, each in gusts of its own; a boat that was brought there once serves every try. The
 * outcomes stand in the order of the numbers and are the same on any number of threads.
 */
final class TurnFleet {
    private final TurnSetup setup;
    private final Map<Long, TurnStart> starts = new HashMap<>();

    TurnFleet(TurnSetup setup) {
        this.setup = setup;
    }

    /** One turn for each number from the first on. */
    List<TurnOutcome> sail(long first, int count, Function<TurnStart, TurnOutcome> how) {
        List<Long> numbers = LongStream.range(first, first + count).boxed().toList();
        List<Long> missing =
                numbers.stream().filter(number -> !starts.containsKey(number)).toList();
        try {
            List<TurnStart> made =
                    InParallel.map("turns", missing, number -> new TurnStart(setup, TurnChance.of(number)));
            for (int i = 0; i < made.size(); i++) {
                starts.put(missing.get(i), made.get(i));
            }
            return InParallel.map("turns", numbers, number -> {
                TurnStart start = starts.get(number);
                if (start == null) {
                    throw new IllegalStateException("no boat of number " + number);
                }
                return how.apply(start);
            });
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the search was interrupted", e);
        }
    }
}
