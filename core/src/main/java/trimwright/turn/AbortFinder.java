package trimwright.turn;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import trimwright.turn.TurnAbort.Action;
import trimwright.turn.TurnAbort.Sign;

/**
 * Looks among turns for the early sign that best parts those that went wrong from the others (by Youden's index, Cancer 3, 1950),
 * on every second one of them, and for what to do by it; what both are worth is told by the rest.
 */
public final class AbortFinder {
    /** Times the middle loss from which a turn went wrong though nothing was spoilt: chosen. */
    private static final double DEAR = 2;

    /** Least index (-), and fewest bad turns that show the sign, for it to be taken: chosen. */
    private static final double TELLS = 0.2;

    private static final int FEWEST = 3;

    private static final double DEGREE = Math.toRadians(1);
    /** Least and largest heel that is asked of a person to feel (degrees): chosen. */
    private static final int FELT = 3;

    private static final int HEELS = 30;
    private static final double SLOWER = 0.05;
    private static final int SLOW = 12;

    private final Predicate<TurnOutcome> isSpoilt;
    private final List<TurnOutcome> turns;
    private final double dear;
    private final Again again;

    /** Sails a turn of the list once more, given up by that. */
    @FunctionalInterface
    public interface Again {
        TurnOutcome sail(TurnAbort abort, int number);
    }

    /**
     * When to give a turn up, and what that is worth by turns that did not choose it.
     *
     * @param abort sign and action
     * @param isTelling false where no sign parts bad turns from good ones: then the sign is what no good turn showed
     * @param shown how many turns showed it
     * @param bad of these went wrong when sailed on
     * @param others how many did not show it
     * @param othersBad of those went wrong
     * @param spoilt of those that showed it were spoilt when sailed on
     * @param stillSpoilt of them were when given up
     */
    public record Found(
            TurnAbort abort,
            boolean isTelling,
            int shown,
            int bad,
            int others,
            int othersBad,
            int spoilt,
            int stillSpoilt) {}

    public AbortFinder(TurnSetup setup, TurnTally tally, Again again) {
        isSpoilt = TurnTally.isSpoilt(setup);
        turns = tally.turns();
        dear = DEAR * Math.max(1, tally.quantile(TurnOutcome::metres, 0.5));
        this.again = again;
    }

    /** The best sign with the better action. */
    public Found find() {
        TurnAbort best = null;
        double index = TELLS;
        for (TurnAbort one : candidates()) {
            Counted counted = count(one, 0);
            if (counted.bad >= FEWEST && counted.youden() > index) {
                best = one;
                index = counted.youden();
            }
        }
        Found found = best == null ? null : told(better(best), true);
        return found == null || !isWorthIt(found) ? told(beyondAll(), false) : found;
    }

    /** No action is told that spoiled as many as going on did, in the turns that chose it or in those that did not. */
    private boolean isWorthIt(Found found) {
        return stillSpoilt(found.abort(), 0) < spoilt(found.abort(), 0) && found.stillSpoilt() < found.spoilt();
    }

    private static List<TurnAbort> candidates() {
        List<TurnAbort> all = new ArrayList<>();
        all.add(new TurnAbort(Sign.TOUCH, 0.5, Action.EASE));
        for (int i = FELT; i <= HEELS; i++) {
            all.add(new TurnAbort(Sign.LEEWARD, i * DEGREE, Action.EASE));
            all.add(new TurnAbort(Sign.WINDWARD, i * DEGREE, Action.EASE));
        }
        for (int i = 2; i <= SLOW; i++) {
            all.add(new TurnAbort(Sign.SLOWING, i * SLOWER, Action.EASE));
        }
        return all;
    }

    /** What no sound turn showed: the crew has no reason to go on there. */
    private TurnAbort beyondAll() {
        double most = turns.stream()
                .filter(turn -> !isBad(turn))
                .mapToDouble(turn -> turn.signs().leeward())
                .max()
                .orElse(0);
        return new TurnAbort(Sign.LEEWARD, Math.max(FELT, Math.ceil(most / DEGREE + 0.5)) * DEGREE, Action.BACK);
    }

    /** Back to the old course costs a second turn, so it is taken only where it spoils fewer than easing does. */
    private TurnAbort better(TurnAbort sign) {
        TurnAbort back = sign.with(Action.BACK);
        return stillSpoilt(back, 0) < stillSpoilt(sign, 0) ? back : sign;
    }

    private Found told(TurnAbort abort, boolean isTelling) {
        Counted counted = count(abort, 1);
        return new Found(
                abort,
                isTelling,
                counted.bad + counted.good,
                counted.bad,
                counted.otherBad + counted.otherGood,
                counted.otherBad,
                spoilt(abort, 1),
                stillSpoilt(abort, 1));
    }

    private int spoilt(TurnAbort abort, int first) {
        int spoilt = 0;
        for (int i = first; i < turns.size(); i += 2) {
            spoilt += abort.shows(turns.get(i).signs()) && isSpoilt.test(turns.get(i)) ? 1 : 0;
        }
        return spoilt;
    }

    private int stillSpoilt(TurnAbort abort, int first) {
        int spoilt = 0;
        for (int i = first; i < turns.size(); i += 2) {
            if (abort.shows(turns.get(i).signs())) {
                spoilt += isSpoilt.test(again.sail(abort, i)) ? 1 : 0;
            }
        }
        return spoilt;
    }

    private record Counted(int bad, int good, int otherBad, int otherGood) {
        double youden() {
            double hits = (double) bad / Math.max(1, bad + otherBad);
            double falls = (double) good / Math.max(1, good + otherGood);
            return hits - falls;
        }
    }

    private Counted count(TurnAbort abort, int first) {
        int[] counts = new int[4];
        for (int i = first; i < turns.size(); i += 2) {
            TurnOutcome turn = turns.get(i);
            counts[(abort.shows(turn.signs()) ? 0 : 2) + (isBad(turn) ? 0 : 1)]++;
        }
        return new Counted(counts[0], counts[1], counts[2], counts[3]);
    }

    private boolean isBad(TurnOutcome turn) {
        return isSpoilt.test(turn) || turn.metres() > dear;
    }
}
