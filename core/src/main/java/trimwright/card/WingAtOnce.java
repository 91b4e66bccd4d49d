package trimwright.card;

import org.jspecify.annotations.Nullable;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;

/**
 * The wing of a boat in a wind that has just changed, before she answers.
 *
 * @param heelingMoment of the air about the leeward main foil (N m), positive to leeward
 * @param sheetLoad at the wing (N), zero where the sheet is slack
 */
public record WingAtOnce(double heelingMoment, double sheetLoad) {
    /**
     * In a state that a wind belongs to.
     *
     * @param wind now (m/s), above 0
     * @param eased the sheet out by that (rad)
     * @return null where the wing's flow has no answer
     */
    public static @Nullable WingAtOnce of(Platform platform, SailingState state, double wind, double eased) {
        TrimmedWing.Held held =
                new TrimmedWing(platform, state, wind).with(Variable.SHEET, state.get(Variable.SHEET) + eased);
        return held == null ? null : new WingAtOnce(held.heelingMoment(), Math.max(0, held.sheetPull()));
    }
}
