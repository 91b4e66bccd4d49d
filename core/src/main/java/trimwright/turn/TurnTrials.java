package trimwright.turn;

import java.util.List;
import java.util.stream.LongStream;

/** Many turns of one setup, gusts and people's delays drawn anew for each; the same for every way of turning. */
public final class TurnTrials {
    private final List<TurnStart> starts;

    /** @param seeds one start each */
    public TurnTrials(TurnSetup setup, List<Long> seeds) {
        starts = seeds.stream()
                .map(seed -> new TurnStart(setup, TurnChance.of(seed)))
                .toList();
    }

    /** So many numbers from one on. */
    public static List<Long> seeds(long first, int count) {
        return LongStream.range(first, first + count).boxed().toList();
    }

    /** All turns by those moves, in the order of the seeds. */
    public List<TurnOutcome> by(TurnMoves moves) {
        return starts.stream().map(start -> start.turn(moves)).toList();
    }

    /** All turns as one does without a plan. */
    public List<TurnOutcome> naively() {
        return starts.stream().map(TurnStart::turnNaively).toList();
    }
}
