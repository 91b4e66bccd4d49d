package trimwright.compare;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import trimwright.segment.Phase;

/** Judges one phase from means over whole seconds. */
final class PhaseJudge {
    private static final double ENOUGH = 0.9;
    private static final double INDEPENDENT = 5;

    private PhaseJudge() {}

    static PhaseResult of(LegProgress progress, Phase phase) {
        int second = Math.max(1, (int) Math.round(1 / progress.step()));
        int seconds = Math.max(1, phase.span().length() / second);
        double[] differences = new double[seconds];
        int judged = 0;
        double made = 0;
        double wanted = 0;
        double all = 0;
        int known = 0;
        boolean doubtful = false;
        for (int k = 0; k < seconds; k++) {
            double madeSum = 0;
            double wantedSum = 0;
            for (int i = 0; i < second; i++) {
                int at = phase.span().from() + k * second + i;
                madeSum += progress.made(at);
                wantedSum += progress.wanted(at);
                doubtful |= progress.isDoubtful(at);
            }
            if (!Double.isNaN(madeSum)) {
                all += madeSum / second;
                known++;
            }
            if (!Double.isNaN(madeSum + wantedSum)) {
                made += madeSum / second;
                wanted += wantedSum / second;
                differences[judged++] = (madeSum - wantedSum) / second;
            }
        }
        Set<CompareCaveat> caveats = EnumSet.noneOf(CompareCaveat.class);
        if (judged < 2) {
            caveats.add(CompareCaveat.NO_REFERENCE);
            return new PhaseResult(phase, all / known, null, null, caveats);
        }
        if (judged < ENOUGH * seconds) {
            caveats.add(CompareCaveat.PARTLY_WITHOUT_REFERENCE);
        }
        if (doubtful) {
            caveats.add(CompareCaveat.TARGET_DOUBTFUL);
        }
        Interval difference = MeanInterval.of(Arrays.copyOf(differences, judged));
        if (difference.independent() < INDEPENDENT) {
            caveats.add(CompareCaveat.FEW_INDEPENDENT_SAMPLES);
        }
        return new PhaseResult(phase, made / judged, wanted / judged, difference, caveats);
    }
}
