package trimwright.setup;

import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;

/** The wind from which a boat gets onto her foils without help. */
final class TakeOffWind {
    private TakeOffWind() {}

    /**
     * Least wind of the book in which she takes off by herself at some angle, to which her crew bears away or heats up (m/s);
     * infinite where there is none. Winds in which that is not known do not count.
     */
    static double lowest(TargetBook book) {
        double lowest = Double.POSITIVE_INFINITY;
        for (TargetPoint point : book.points()) {
            boolean isTakingOff = point.mode() == TargetMode.ANGLE
                    && point.isFoiling()
                    && point.isSolved()
                    && !point.getTarget().caveats().contains(TargetCaveat.NOT_REACHED_BY_ITSELF)
                    && !point.getTarget().caveats().contains(TargetCaveat.TAKE_OFF_NOT_KNOWN);
            if (isTakingOff) {
                lowest = Math.min(lowest, point.trueWindSpeed());
            }
        }
        return lowest;
    }
}
