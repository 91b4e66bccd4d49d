package trimwright.compare;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import trimwright.segment.Phase;

/** How a boat sailed a leg when it sailed steadily: means over the phases of the leg. */
final class Steady {
    private Steady() {}

    /** Progress over that of the reference (-), NaN without any phase. */
    static double progress(LegProgress progress, List<Phase> phases) {
        return mean(progress, phases, i -> progress.made(i) / progress.wanted(i));
    }

    /** Mean of the known values of a function of the instant, NaN without any. */
    static double mean(LegProgress progress, List<Phase> phases, IntToDoubleFunction value) {
        double sum = 0;
        int count = 0;
        for (Phase phase : phases) {
            if (!phase.span().overlaps(progress.leg().span())) {
                continue;
            }
            for (int i = phase.span().from(); i < phase.span().to(); i++) {
                double at = value.applyAsDouble(i);
                if (!Double.isNaN(at)) {
                    sum += at;
                    count++;
                }
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }
}
