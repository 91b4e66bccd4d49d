package trimwright.turn;

import java.util.ArrayList;
import java.util.List;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.Sight;
import trimwright.motion.MotionModel;

/** What a log of a turn would show: the sheet's way, and metres lost against sailing on as before, as the debrief counts them. */
final class TurnGauge {
    private static final double STEP = MotionModel.STEP;

    /** Time over which the speed made good before the turn is taken, up to when, and over which it counts as back (s): the debrief's. */
    static final double BEFORE = 10;

    private static final double LAST = 1;
    private static final double BACK_FOR = 2;

    /** Share of it at which it is back (-), and how long after the turn's end the account is closed (s): the debrief's. */
    private static final double BACK = 0.95;

    private static final double CLOSED = 30;

    /** What is left to haul when the sheet counts as in (-): chosen, the last creeps in with the speed. */
    private static final double IN = 0.05;

    private final Way way;
    private final List<Double> good;
    private final int word;
    private final List<Double> sheets = new ArrayList<>();
    private double atWord = Double.NaN;
    private double atBow;

    /** @param before speed made good in each step of the last seconds before the word (m/s) */
    TurnGauge(Way way, List<Double> before) {
        this.way = way;
        good = new ArrayList<>(before);
        word = good.size();
    }

    /** Speed made good against the wind or down it, the mean wind from north (m/s). */
    static double good(Sight sight, Way way) {
        double north = sight.speed() * StrictMath.cos(sight.course());
        return way == Way.UPWIND ? north : -north;
    }

    /** @param side from which the wind is felt: +1 starboard, -1 port */
    void add(Sight sight, int side, boolean isSwinging, boolean isOpen) {
        good.add(good(sight, way));
        double now = side * sight.state().controls().sheet();
        if (!isSwinging) {
            atWord = Double.isNaN(atWord) ? now : atWord;
            atBow = now;
        } else if (isOpen) {
            sheets.add(now);
        }
    }

    SheetWork sheet() {
        double widest = Double.NEGATIVE_INFINITY;
        int widestAt = 0;
        int from = 0;
        double hauled = 0;
        for (int i = 0; i < sheets.size(); i++) {
            double now = sheets.get(i);
            if (now > widest) {
                widest = now;
                widestAt = i;
            }
            if (widest - now > hauled) {
                hauled = widest - now;
                from = widestAt;
            }
        }
        int to = from;
        while (to < sheets.size() && sheets.get(from) - sheets.get(to) < (1 - IN) * hauled) {
            to++;
        }
        return new SheetWork(atBow - atWord, hauled, (to - from) * STEP);
    }

    /**
     * Metres made good less than by sailing on; NaN where the turn never came.
     *
     * @param helm from the word until the helm goes over (s)
     * @param done from there until the new course is held (s), NaN where it is not
     */
    double lost(double helm, double done) {
        if (Double.isNaN(helm)) {
            return Double.NaN;
        }
        int from = word + steps(helm);
        double entry = mean(Math.max(0, from - steps(BEFORE)), from - steps(LAST));
        int end = from + (Double.isNaN(done) ? 0 : steps(done));
        int close = Math.min(good.size(), end + steps(CLOSED));
        int until = end;
        while (until < close && mean(until, Math.min(good.size(), until + steps(BACK_FOR))) < BACK * entry) {
            until++;
        }
        double lost = 0;
        for (int i = from; i < until; i++) {
            lost += (entry - good.get(i)) * STEP;
        }
        return lost;
    }

    private double mean(int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += good.get(i);
        }
        return sum / Math.max(1, to - from);
    }

    private static int steps(double time) {
        return (int) Math.round(time / STEP);
    }
}
