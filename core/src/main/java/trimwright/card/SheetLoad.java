package trimwright.card;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Handling;
import trimwright.boat.SheetTackle;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.power.CriticalPower;
import trimwright.power.Hauling;

/**
 * The sheet in one state: its load, and what it takes to haul the wing back to its trim after it was eased by {@link #ANGLE}
 * while boat speed and course stayed.
 *
 * @param load at the wing (N), zero where the sheet is slack
 * @param loadEased at the wing when eased by that angle (N)
 * @param work at the wing to haul it back (J), not below 0: where the air takes the wing in, arms do nothing
 * @param secondsEasing to let it go
 * @param secondsKept to haul it back with the power that all grinders keep up for long, oil apart
 * @param secondsAllOut to haul it back all out from rest
 */
public record SheetLoad(
        double load, double loadEased, double work, double secondsEasing, double secondsKept, double secondsAllOut) {
    /** Five degrees: what a card speaks of. */
    public static final double ANGLE = Math.PI / 36;

    /** Pieces of Simpson's rule; even. Between 4 and 8 the work differs by under a thousandth (SheetLoadPropertyTest). */
    static final int PIECES = 4;

    /** Mean turning moment while hauled back (N m). */
    public double meanMoment() {
        return work / ANGLE;
    }

    /** The sheet in a state, or null where the wing's flow has no answer on the way. */
    public static @Nullable SheetLoad of(Platform platform, Handling handling, SailingState state, double wind) {
        return of(platform, handling, state, wind, PIECES);
    }

    static @Nullable SheetLoad of(Platform platform, Handling handling, SailingState state, double wind, int pieces) {
        TrimmedWing wing = new TrimmedWing(platform, state, wind);
        SheetTackle tackle = platform.wing().sheet();
        double sum = 0;
        double first = 0;
        double last = 0;
        for (int i = 0; i <= pieces; i++) {
            TrimmedWing.Held held = wing.with(Variable.SHEET, state.get(Variable.SHEET) + i * ANGLE / pieces);
            if (held == null) {
                return null;
            }
            first = i == 0 ? held.turningMoment() : first;
            last = held.turningMoment();
            double weight = i == 0 || i == pieces ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * Math.max(0, held.turningMoment());
        }
        double work = sum * ANGLE / (3 * pieces);
        Hauling hauling = Hauling.of(tackle, handling);
        CriticalPower one = CriticalPower.of(handling.grinders());
        int count = handling.grinders().count();
        return new SheetLoad(
                Math.max(0, first / tackle.lever()),
                Math.max(0, last / tackle.lever()),
                work,
                ANGLE / handling.rates().sheetEase(),
                hauling.seconds(ANGLE, work, count * one.power()),
                hauling.secondsAllOut(ANGLE, work, one, count));
    }
}
