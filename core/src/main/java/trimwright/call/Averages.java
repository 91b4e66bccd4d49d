package trimwright.call;

import trimwright.live.Gauge;
import trimwright.live.LiveFigures;

/** Means of the last 20 s, of which calls speak: never of the gust at hand. One value of each a second. */
final class Averages {
    /** Seconds: the least that a call may speak of. */
    static final int SECONDS = 20;

    /** Fewest known seconds among them that make a mean (chosen): a book has no target at some winds and angles. */
    private static final int FEWEST = 12;

    /** Values of which one cannot tell the errors apart: that of a filtered wind is forgotten in some ten seconds. */
    private static final double INDEPENDENT = 2;

    /** One control's means (rad). */
    record Control(double value, double low, double aim, double high) {
        boolean isKnown() {
            return !Double.isNaN(value) && !Double.isNaN(aim);
        }
    }

    private enum Of {
        LOST,
        LOST_ERROR,
        SPEED,
        HEEL,
        HEEL_AIM,
        MOMENT,
        MOMENT_ERROR,
        MOMENT_AIM,
        CAMBER,
        CAMBER_LOW,
        CAMBER_AIM,
        CAMBER_HIGH,
        TWIST,
        TWIST_LOW,
        TWIST_AIM,
        TWIST_HIGH
    }

    private static final int KINDS = Of.values().length;

    private final double[][] values = new double[SECONDS][KINDS];
    private int count;

    void clear() {
        count = 0;
    }

    boolean isFull() {
        return count >= SECONDS;
    }

    void add(LiveFigures figures) {
        double[] row = values[count % SECONDS];
        double share = figures.aim().share().value();
        double reachable = figures.aim().reachable().value();
        set(row, Of.LOST, (1 - share) * reachable);
        set(row, Of.LOST_ERROR, figures.aim().reachable().error());
        set(row, Of.SPEED, reachable);
        set(row, Of.HEEL, figures.motion().heel());
        set(row, Of.HEEL_AIM, figures.load().heelAim());
        set(row, Of.MOMENT, figures.load().moment().value());
        set(row, Of.MOMENT_ERROR, figures.load().moment().error());
        set(row, Of.MOMENT_AIM, figures.load().aim());
        put(row, Of.CAMBER, figures.trim().camber());
        put(row, Of.TWIST, figures.trim().twist());
        count++;
    }

    private static void set(double[] row, Of what, double value) {
        row[what.ordinal()] = value;
    }

    private static void put(double[] row, Of first, Gauge gauge) {
        int at = first.ordinal();
        row[at] = gauge.value();
        row[at + 1] = gauge.low();
        row[at + 2] = gauge.aim();
        row[at + 3] = gauge.high();
    }

    /** Of the seconds that are known; NaN where these are too few. */
    private double mean(Of what) {
        double sum = 0;
        int known = 0;
        for (double[] row : values) {
            if (!Double.isNaN(row[what.ordinal()])) {
                sum += row[what.ordinal()];
                known++;
            }
        }
        return known < FEWEST ? Double.NaN : sum / known;
    }

    /** Standard error of a mean from the scatter of its values. */
    private double scatter(Of what) {
        double mean = mean(what);
        double sum = 0;
        int known = 0;
        for (double[] row : values) {
            double off = row[what.ordinal()] - mean;
            if (!Double.isNaN(off)) {
                sum += off * off;
                known++;
            }
        }
        return Math.sqrt(sum / Math.max(1, known - 1) / INDEPENDENT);
    }

    /** How far speed lay under what is reachable (m/s). */
    double lost() {
        return mean(Of.LOST);
    }

    double lostError() {
        return StrictMath.hypot(scatter(Of.LOST), mean(Of.LOST_ERROR) / Math.sqrt(INDEPENDENT));
    }

    double speed() {
        return mean(Of.SPEED);
    }

    /** Heel less its aim (rad), negative to leeward of it. */
    double heelOff() {
        return mean(Of.HEEL) - mean(Of.HEEL_AIM);
    }

    /** NaN where it is not measured (N m). */
    double moment() {
        return mean(Of.MOMENT);
    }

    /** A gauge's own error does not average out. */
    double momentError() {
        return StrictMath.hypot(scatter(Of.MOMENT), mean(Of.MOMENT_ERROR));
    }

    double momentAim() {
        return mean(Of.MOMENT_AIM);
    }

    Control camber() {
        return new Control(mean(Of.CAMBER), mean(Of.CAMBER_LOW), mean(Of.CAMBER_AIM), mean(Of.CAMBER_HIGH));
    }

    Control twist() {
        return new Control(mean(Of.TWIST), mean(Of.TWIST_LOW), mean(Of.TWIST_AIM), mean(Of.TWIST_HIGH));
    }
}
