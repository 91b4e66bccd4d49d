package trimwright.fleet;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What data a boat's differences rest on. */
final class Evidences {
    /** A stretch goes on over gaps of this many seconds: chosen. */
    private static final int BRIDGED = 5;

    private Evidences() {}

    static Difference.Evidence of(Moments moments, int boat, double worth) {
        int second = moments.clock().steps(1);
        List<Moments.Moment> with =
                moments.all().stream().filter(moment -> has(moment, boat)).toList();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        int[] best = {-1, -1};
        int[] now = {-1, -1};
        for (Moments.Moment moment : with) {
            low = Math.min(low, moment.wind());
            high = Math.max(high, moment.wind());
            if (now[0] < 0 || moment.at() > now[1] + BRIDGED * second) {
                now[0] = moment.at();
            }
            now[1] = moment.at() + second;
            if (now[1] - now[0] > best[1] - best[0] || best[0] < 0) {
                best = now.clone();
            }
        }
        return new Difference.Evidence(with.size(), worth, known(low), known(high), best[0], best[1]);
    }

    private static @Nullable Double known(double value) {
        return Double.isInfinite(value) ? null : value;
    }

    private static boolean has(Moments.Moment moment, int boat) {
        for (int there : moment.boats()) {
            if (there == boat) {
                return true;
            }
        }
        return false;
    }
}
