package trimwright.dock;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** What a check says of the instruments' offsets before any sailing; nothing of an instrument that is at fault in another way. */
final class Prior {
    /** How level she lies, how true pins stand, how near a free wing comes to the wind (rad, one standard deviation): chosen. */
    private static final double LEVEL = Math.toRadians(0.3);

    private static final double PINS = Math.toRadians(0.15);

    private static final double FREE = Math.toRadians(1);

    /** How well a pull is known, over it (-): chosen. */
    private static final double KNOWN_PULL = 0.01;

    /** Half a 95 % interval in standard errors, of the normal distribution. */
    private static final double NORMAL = 1.959964;

    private static final Set<DockFinding> SOUND = EnumSet.of(DockFinding.NONE, DockFinding.OFF, DockFinding.UNSURE);

    private final DockAnswer.Checked checked;
    private final List<DockOffset> prior = new ArrayList<>();

    private Prior(DockAnswer.Checked checked) {
        this.checked = checked;
    }

    static List<DockOffset> of(DockAnswer.Checked checked) {
        Prior one = new Prior(checked);
        one.add(DockOffset.Quantity.ROLL, LEVEL, DockItem.HEEL_ZERO, DockItem.HEEL_SIDE);
        one.add(DockOffset.Quantity.PITCH, LEVEL, DockItem.PITCH_ZERO);
        one.add(
                DockOffset.Quantity.CAMBER,
                PINS,
                DockItem.FLAP_FOOT_ZERO,
                DockItem.CAMBER_STARBOARD,
                DockItem.CAMBER_PORT);
        one.addTwist();
        one.add(DockOffset.Quantity.SHEET, PINS, DockItem.SHEET_ZERO, DockItem.SHEET_PORT, DockItem.SHEET_STARBOARD);
        one.add(DockOffset.Quantity.WIND_ANGLE, FREE, DockItem.WIND_ALIGNMENT, DockItem.WIND_TURNS);
        one.addLoad();
        return one.prior;
    }

    private boolean isSound(DockItem... items) {
        for (DockItem item : items) {
            if (!SOUND.contains(checked.get(item).finding())) {
                return false;
            }
        }
        return true;
    }

    private void add(DockOffset.Quantity quantity, double open, DockItem zero, DockItem... others) {
        if (isSound(zero) && isSound(others)) {
            DockLine line = checked.get(zero);
            prior.add(new DockOffset(quantity, line.difference(), StrictMath.hypot(line.error() / NORMAL, open)));
        }
    }

    /** The foot's offset less the head's. */
    private void addTwist() {
        if (isSound(DockItem.FLAP_FOOT_ZERO, DockItem.FLAP_HEAD_ZERO, DockItem.TWIST_STARBOARD, DockItem.TWIST_PORT)) {
            DockLine foot = checked.get(DockItem.FLAP_FOOT_ZERO);
            DockLine head = checked.get(DockItem.FLAP_HEAD_ZERO);
            double error = StrictMath.hypot(foot.error(), head.error()) / NORMAL;
            prior.add(new DockOffset(
                    DockOffset.Quantity.TWIST, foot.difference() - head.difference(), StrictMath.hypot(error, PINS)));
        }
    }

    /** The factor on the load, the slack reading taken off. */
    private void addLoad() {
        DockLine pull = checked.get(DockItem.LOAD_PULL);
        DockLine slack = checked.get(DockItem.LOAD_SLACK);
        if (isSound(DockItem.LOAD_PULL, DockItem.LOAD_SLACK)) {
            double factor = (pull.read() - slack.read()) / pull.expected();
            double error = StrictMath.hypot(pull.error(), slack.error()) / NORMAL / pull.expected();
            prior.add(new DockOffset(
                    DockOffset.Quantity.SHEET_LOAD, factor, StrictMath.hypot(error, KNOWN_PULL * factor)));
        }
    }
}
