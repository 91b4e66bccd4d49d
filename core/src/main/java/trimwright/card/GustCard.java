package trimwright.card;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Handling;
import trimwright.boat.TrimRange;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.power.CriticalPower;
import trimwright.power.Hauling;
import trimwright.target.TargetPoint;

/**
 * What a gust does to a boat at a target in its first second, and which control answers it: the wing's steady flow in the new
 * wind, boat speed, course, heel and foils as they were. Leaves out the lag of lift behind the wind, which makes the true jump
 * later and softer, and the gust's own shape: it fills the whole height at once, in the profile of a steady wind. {@link GustWatch}
 * has both.
 */
public final class GustCard {
    /** Steps in which a control is followed to its end; chosen: a stall between two of them is seen on the next. */
    private static final int STEPS = 30;

    /** Halvings of such a step: to some 1e-7 of a control's range. */
    private static final int HALVINGS = 18;

    private final Platform platform;
    private final Handling handling;

    /** @param handling of the platform's boat */
    public GustCard(Platform platform, Handling handling) {
        this.platform = platform;
        this.handling = handling;
    }

    /**
     * A change of wind at a solved target.
     *
     * @param change of the true wind speed at 10 m (m/s); the new wind must be above 0
     * @param shift of the wind with it (rad), positive aft
     * @return null where the wing's flow has no answer in the new wind
     */
    public @Nullable GustRow rowOf(TargetPoint point, double change, double shift) {
        SailingState state = point.state();
        TrimmedWing.Held before = new TrimmedWing(platform, state, point.trueWindSpeed()).asTrimmed();
        TrimmedWing wing = new TrimmedWing(platform, state, point.trueWindSpeed() + change, shift);
        TrimmedWing.Held atOnce = wing.asTrimmed();
        if (before == null || atOnce == null) {
            return null;
        }
        List<GustAct> acts = new ArrayList<>();
        // Downwind a puff can stall the wing, and then the moment hardly jumps: out with the sheet all the same.
        double margin = Math.min(platform.wing().trim().stallMarginMin(), before.stallMargin());
        double sign = atOnce.heelingMoment() > before.heelingMoment() || atOnce.stallMargin() < margin ? 1 : -1;
        acts.add(act(wing, Variable.SHEET, sign, before, atOnce));
        acts.add(act(wing, Variable.CAMBER, -sign, before, atOnce));
        acts.add(act(wing, Variable.TWIST, sign, before, atOnce));
        return new GustRow(
                change,
                shift,
                before.heelingMoment(),
                atOnce.heelingMoment(),
                before.drive(),
                atOnce.drive(),
                Math.max(0, atOnce.sheetPull()),
                atOnce.stallMargin(),
                acts);
    }

    /** @param way the control goes: +1 to more, -1 to less */
    private GustAct act(
            TrimmedWing wing, Variable control, double way, TrimmedWing.Held before, TrimmedWing.Held atOnce) {
        double from = wing.get(control);
        double step = (end(wing, control, way) - from) / STEPS;
        double change = 0;
        TrimmedWing.Held held = atOnce;
        boolean isEnough = false;
        for (int i = 1; i <= STEPS && !isEnough; i++) {
            TrimmedWing.Held next = wing.with(control, from + i * step);
            if (next == null || !isAllowed(next, atOnce)) {
                break;
            }
            isEnough = isDone(next, before, atOnce);
            change = i * step;
            held = next;
        }
        if (isEnough) {
            change = narrowed(wing, control, change - step, change, before, atOnce);
            TrimmedWing.Held found = wing.with(control, from + change);
            held = found == null ? held : found;
        }
        double rate = rate(control, way, atOnce);
        double seconds = Math.abs(change) / rate;
        double within = Math.copySign(Math.min(Math.abs(change), rate * GustAct.IN_TIME), change);
        TrimmedWing.Held soon = wing.with(control, from + within);
        return new GustAct(
                control,
                change,
                isEnough,
                seconds,
                held.heelingMoment(),
                held.drive(),
                held.stallMargin(),
                soon == null ? atOnce.heelingMoment() : soon.heelingMoment());
    }

    private double narrowed(
            TrimmedWing wing,
            Variable control,
            double low,
            double high,
            TrimmedWing.Held before,
            TrimmedWing.Held atOnce) {
        double from = wing.get(control);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            TrimmedWing.Held held = wing.with(control, from + middle);
            if (held == null || isDone(held, before, atOnce)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /** The moment back where it was, and no stall that was not there. */
    private boolean isDone(TrimmedWing.Held held, TrimmedWing.Held before, TrimmedWing.Held atOnce) {
        double margin = Math.min(platform.wing().trim().stallMarginMin(), before.stallMargin());
        double aim = before.heelingMoment();
        boolean stalls = atOnce.stallMargin() < margin;
        boolean isPast =
                atOnce.heelingMoment() > aim || stalls ? held.heelingMoment() <= aim : held.heelingMoment() >= aim;
        return isPast && (!stalls || held.stallMargin() >= margin);
    }

    /** How far a control goes on this wing that way, the others as they are. */
    private double end(TrimmedWing wing, Variable control, double way) {
        TrimRange range = platform.wing().trim();
        boolean isMore = way > 0;
        double camber = wing.get(Variable.CAMBER);
        double twist = wing.get(Variable.TWIST);
        double end = switch (control) {
            case SHEET -> isMore ? range.sheetMax() : 0;
            case CAMBER -> isMore ? range.camberMax() : Math.max(0, range.headFlapMin() + twist);
            case TWIST -> isMore ? Math.min(range.twistMax(), camber - range.headFlapMin()) : 0;
            default -> throw new IllegalArgumentException("not a control of the wing: " + control);
        };
        // A target may stand on a bound, a rounding beyond it.
        return isMore ? Math.max(end, wing.get(control)) : Math.min(end, wing.get(control));
    }

    /** No trim past a limit of the boat file, unless the gust itself is past it and the trim leads back. */
    private boolean isAllowed(TrimmedWing.Held held, TrimmedWing.Held atOnce) {
        double stall = Math.min(platform.wing().trim().stallMarginMin(), atOnce.stallMargin());
        double load = Math.max(platform.wing().sheet().loadMax(), atOnce.sheetPull());
        return held.stallMargin() >= stall && held.sheetPull() <= load;
    }

    /** How fast a control goes that way in the gust's first second (rad/s). */
    private double rate(Variable control, double way, TrimmedWing.Held atOnce) {
        Handling.ControlRates rates = handling.rates();
        return switch (control) {
            case SHEET -> way > 0 ? rates.sheetEase() : hauling(Math.max(0, atOnce.sheetPull()));
            case CAMBER -> rates.camber();
            case TWIST -> rates.twist();
            default -> throw new IllegalArgumentException("not a control of the wing: " + control);
        };
    }

    private double hauling(double load) {
        Handling.Grinders grinders = handling.grinders();
        double power = grinders.count() * CriticalPower.of(grinders).most(GustAct.IN_TIME);
        return Hauling.of(platform.wing().sheet(), handling).rate(load, power);
    }
}
