package trimwright.turn;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.practice.DrillMoment;

/** Follows a tack or gybe that is sailed in a drill along a plan's cues: which comes next, and when each came. */
public final class CueLine {
    /** What is waited for, in order. */
    public enum Cue {
        WORD,
        BOW,
        /** Apparent wind where the camber goes over. */
        OVER,
        /** Apparent wind on the new side where the new trim is sheeted. */
        ON,
        /** The driver holds the new course. */
        HELD
    }

    private final TurnMoves moves;
    private final double word;
    private final Map<Cue, Double> came = new EnumMap<>(Cue.class);
    private Cue next = Cue.WORD;
    private int from;
    private @Nullable Double camber;
    private double before;

    /** Of that way the camber has gone when it has begun to go over (rad): chosen, as debriefs have it. */
    private static final double BEGUN = Math.toRadians(3);

    /** @param word when the driver says that the turn comes (s from the drill's beginning) */
    public CueLine(TurnMoves moves, double word) {
        this.moves = moves;
        this.word = word;
    }

    /** Looks at the next instant. */
    public void see(DrillMoment moment) {
        double angle = moment.sight().felt().angle();
        if (from == 0 && moment.time() >= word) {
            from = angle >= 0 ? 1 : -1;
            before = from * moment.sight().state().controls().camber();
        }
        if (from == 0) {
            return;
        }
        if (camber == null
                && from * moment.sight().state().controls().camber() < before - BEGUN
                && next.compareTo(Cue.BOW) > 0) {
            camber = moment.time();
        }
        boolean isHere = switch (next) {
            case WORD -> true;
            case BOW -> moment.turn() != null;
            case OVER -> from * angle <= moves.over();
            case ON -> -from * angle >= moves.on();
            case HELD -> !came.containsKey(Cue.HELD) && moment.turn() == null;
        };
        if (isHere) {
            came.put(next, moment.time());
            next = Cue.values()[Math.min(next.ordinal() + 1, Cue.HELD.ordinal())];
        }
    }

    /** What is waited for; null once the new course is held. */
    public @Nullable Cue next() {
        return came.containsKey(Cue.HELD) ? null : next;
    }

    /** When a cue came (s from the word), null where it did not. */
    public @Nullable Double after(Cue cue) {
        Double time = came.get(cue);
        return time == null ? null : time - word;
    }

    /** When the camber began to go over (s from the word), null where it did not. */
    public @Nullable Double camber() {
        Double time = camber;
        return time == null ? null : time - word;
    }

    /** When the driver's word falls (s from the drill's beginning). */
    public double word() {
        return word;
    }
}
