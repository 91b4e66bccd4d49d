package trimwright.turn;

import java.util.List;

/** Sails turns by given moves; the same moves and numbers give the same outcomes. */
@FunctionalInterface
public interface TurnSource {
    /**
     * One turn for each number, in their order.
     *
     * @param first number from which gusts and people's delays are drawn
     * @param count how many, on from there
     */
    List<TurnOutcome> sail(TurnMoves moves, long first, int count);
}
