package trimwright.setup;

import java.util.Arrays;
import trimwright.target.Branch;
import trimwright.target.TargetBook;

/** Speed along one bearing with the wind from one direction, over the winds of a book: on the foils and on the hulls. */
final class LegSpeeds {
    /** Steps between two winds of the book; chosen: the lines between err by under 0.01 m/s. */
    private static final int STEPS = 4;

    /** Steps for which the last speed on the hulls is kept; chosen: two winds of the book. */
    private static final int HELD = 2 * STEPS;

    private final double[] winds;
    private final double[] onFoils;
    private final double[] onHulls;
    private final double comesDown;

    LegSpeeds(TargetBook book, double bearing, double windFrom, Forecast forecast) {
        double[] nodes =
                book.grid().winds().stream().mapToDouble(Double::doubleValue).toArray();
        winds = new double[(nodes.length - 1) * STEPS + 1];
        for (int i = 0; i < winds.length; i++) {
            int cell = Math.min(i / STEPS, Math.max(0, nodes.length - 2));
            double part = (i - cell * STEPS) / (double) STEPS;
            winds[i] = nodes.length == 1 ? nodes[0] : nodes[cell] + part * (nodes[cell + 1] - nodes[cell]);
        }
        onFoils = speeds(new WayMade(book, Branch.FOILING), bearing, windFrom, forecast);
        onHulls = speeds(new WayMade(book, Branch.DISPLACEMENT), bearing, windFrom, forecast);
        holdLast(onHulls);
        // Above the last wind in which the book has her on the foils nothing is known; it tells nothing of those below.
        int top = winds.length - 1;
        while (top >= 0 && Double.isNaN(onFoils[top])) {
            top--;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int i = top; i >= 0 && isFoilingPaid(i); i--) {
            least = winds[i];
        }
        comesDown = least;
    }

    private double[] speeds(WayMade way, double bearing, double windFrom, Forecast forecast) {
        double[] speeds = new double[winds.length];
        Arrays.setAll(speeds, i -> way.along(bearing, winds[i], windFrom, forecast.currentTo(), forecast.current()));
        return speeds;
    }

    /**
     * Above a wind in which the book has her on her hulls there may be some in which it has no target there, since she could take
     * off or the wing stalls: if she has not taken off, the last speed is kept, which is too low rather than too high.
     */
    private static void holdLast(double[] speeds) {
        for (int i = speeds.length - 2; i >= 0; i--) {
            for (int k = i + 1; k < speeds.length && k <= i + HELD && Double.isNaN(speeds[k]); k++) {
                speeds[k] = speeds[i];
            }
        }
    }

    private boolean isFoilingPaid(int i) {
        return onFoils[i] > 0 && !(onHulls[i] > onFoils[i]);
    }

    /** Above this wind it pays to be up on this leg, at all winds in which the book has her so (m/s); infinite where never. */
    double comesDown() {
        return comesDown;
    }

    /** NaN where there is no answer. */
    double onFoils(double wind) {
        return at(onFoils, wind);
    }

    /** NaN where there is no answer. */
    double onHulls(double wind) {
        return at(onHulls, wind);
    }

    private double at(double[] speeds, double wind) {
        if (!(wind >= winds[0] && wind <= winds[winds.length - 1])) {
            return Double.NaN;
        }
        int i = 0;
        while (i < winds.length - 2 && wind >= winds[i + 1]) {
            i++;
        }
        int next = Math.min(i + 1, winds.length - 1);
        double part = next == i ? 0 : (wind - winds[i]) / (winds[next] - winds[i]);
        if (Double.isNaN(speeds[i]) || Double.isNaN(speeds[next])) {
            // At the edge of a branch the nearer of the two decides, so that no wind between them is lost.
            return part < 0.5 ? speeds[i] : speeds[next];
        }
        return speeds[i] + part * (speeds[next] - speeds[i]);
    }
}
