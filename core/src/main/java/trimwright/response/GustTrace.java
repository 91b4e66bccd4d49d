package trimwright.response;

import java.util.List;

/**
 * A boat's speed second by second through one step of the wind, beside its target.
 *
 * @param before seconds that belong to the wind before the step
 * @param speeds through the water (m/s)
 * @param targets at the angle sailed in the wind of that second (m/s)
 */
record GustTrace(int before, List<Double> speeds, List<Double> targets) {
    /** Seconds at either end that tell how near the target she settles. */
    private static final int SETTLED = 10;

    GustTrace {
        speeds = List.copyOf(speeds);
        targets = List.copyOf(targets);
    }

    /** Speed over target once settled in the first wind (-). */
    double shareBefore() {
        return share(before - SETTLED, before);
    }

    /** The same at the end (-). */
    double shareAfter() {
        return share(speeds.size() - SETTLED, speeds.size());
    }

    private double share(int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += speeds.get(i) / targets.get(i);
        }
        return sum / (to - from);
    }

    /**
     * The first-order response of that time (s), from the step on. Targets are scaled to where she settles, so that it is
     * judged how fast she follows and not how near the card's straight lines lie to her balance.
     */
    double[] followed(double time) {
        double scale = shareAfter();
        double[] speed = new double[speeds.size() - before];
        speed[0] = speeds.get(before);
        for (int i = 1; i < speed.length; i++) {
            speed[i] = ReachableSpeed.followed(speed[i - 1], scale * targets.get(before + i - 1), time, 1);
        }
        return speed;
    }

    /** Sum of squares of the speeds less that response (m2/s2). */
    double misfit(double time) {
        double[] followed = followed(time);
        double sum = 0;
        for (int i = 0; i < followed.length; i++) {
            double off = speeds.get(before + i) - followed[i];
            sum += off * off;
        }
        return sum;
    }

    /** Least and largest share of that response that she makes after the step, means of so many seconds (-). */
    double[] shares(double time, int seconds) {
        double[] followed = followed(time);
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        double made = 0;
        double wanted = 0;
        for (int i = 1 - seconds; i < followed.length; i++) {
            // Before the step she does what is wanted, whatever that is.
            made += speeds.get(before + i);
            wanted += wanted(followed, i);
            if (i >= 0) {
                least = Math.min(least, made / wanted);
                most = Math.max(most, made / wanted);
                made -= speeds.get(before + i + 1 - seconds);
                wanted -= wanted(followed, i + 1 - seconds);
            }
        }
        return new double[] {least, most};
    }

    private double wanted(double[] followed, int i) {
        return i < 0 ? speeds.get(before + i) : followed[i];
    }
}
