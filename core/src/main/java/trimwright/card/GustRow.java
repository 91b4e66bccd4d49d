package trimwright.card;

import java.util.Comparator;
import java.util.List;

/**
 * A change of wind at a target, before the boat answers.
 *
 * @param change of the true wind speed (m/s), negative in a lull
 * @param shift of the wind with it (rad), positive aft
 * @param before heeling moment at the target (N m)
 * @param atOnce heeling moment in the new wind, nothing moved (N m)
 * @param driveBefore drive at the target (N)
 * @param driveAtOnce drive in the new wind, nothing moved (N)
 * @param sheetLoadAtOnce of the sheet in the new wind, nothing moved (N)
 * @param stallMarginAtOnce least along the wing in the new wind, nothing moved (rad)
 * @param acts what each control does about it
 */
public record GustRow(
        double change,
        double shift,
        double before,
        double atOnce,
        double driveBefore,
        double driveAtOnce,
        double sheetLoadAtOnce,
        double stallMarginAtOnce,
        List<GustAct> acts) {
    /** Share of the drive before the gust by which two acts count as equal (-); chosen, under what anybody sees on the boat. */
    private static final double EQUAL = 0.02;

    public GustRow {
        acts = List.copyOf(acts);
        if (acts.isEmpty()) {
            throw new IllegalArgumentException("there is always a control to move");
        }
    }

    /** Moment to be shed (N m); in a lull negative: to be won. */
    public double jump() {
        return atOnce - before;
    }

    /** Whether the wing stalls in the new wind before anybody moves: downwind a puff comes from further aft. */
    public boolean isStalled() {
        return stallMarginAtOnce < 0;
    }

    /** What an act costs (N of drive for each N m that it sheds), against the gust with nothing moved; NaN where it sheds nothing. */
    public double price(GustAct act) {
        double shed = atOnce - act.heelingMoment();
        return shed == 0 ? Double.NaN : (driveAtOnce - act.drive()) / shed;
    }

    /**
     * What to do first: of the controls that bring the moment back in time, and leave the most drive to within {@link #EQUAL}, the
     * soonest done; where none is in time, the one that brings the moment nearest within the time.
     */
    public GustAct first() {
        double most = acts.stream()
                .filter(GustAct::isInTime)
                .mapToDouble(GustAct::drive)
                .max()
                .orElse(Double.NaN);
        Comparator<GustAct> order = Double.isNaN(most)
                ? Comparator.comparingDouble(act -> Math.abs(act.inOneSecond() - before))
                : Comparator.comparingDouble(GustAct::seconds);
        return acts.stream()
                .filter(act ->
                        Double.isNaN(most) || (act.isInTime() && act.drive() >= most - EQUAL * Math.abs(driveBefore)))
                .min(order)
                .orElseThrow();
    }
}
