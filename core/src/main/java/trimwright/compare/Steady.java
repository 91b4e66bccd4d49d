package trimwright.compare;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import trimwright.segment.OffFoil;
import trimwright.segment.Phase;
import trimwright.segment.Pieces;
import trimwright.segment.Span;
import trimwright.segment.Turn;

/**
 * How a boat sails when it sails steadily: means over phases. What progress it makes then is taken from where it has
 * settled: some time after turns and spells off the foils, whose last effects would else pull it down.
 */
final class Steady {
    /** Time from the end of a turn or a spell off the foils until a boat counts as settled (s): chosen, see validation. */
    private static final double SETTLING = 30;

    /** Less settled sailing than this says nothing of a leg (s): chosen. */
    private static final double ENOUGH = 20;

    private final Pieces pieces;
    private final boolean[] unsettled;

    /** @param progress of the legs in which pieces were found */
    Steady(List<LegProgress> progress, Pieces pieces) {
        this.pieces = pieces;
        int size = 0;
        double step = 1;
        for (LegProgress leg : progress) {
            size = Math.max(size, leg.leg().span().to());
            step = leg.step();
        }
        unsettled = new boolean[size];
        int settling = (int) Math.round(SETTLING / step);
        for (Turn turn : pieces.turns()) {
            mark(turn.span(), settling);
        }
        for (OffFoil spell : pieces.offFoil()) {
            mark(spell.span(), settling);
        }
    }

    private void mark(Span span, int settling) {
        int from = Math.min(unsettled.length, span.from());
        Arrays.fill(unsettled, from, Math.max(from, Math.min(unsettled.length, span.to() + settling)), true);
    }

    /**
     * Progress over that of the reference (-): of the leg where it was settled long enough, else of all legs of its kind,
     * else from all phases of the leg, else of its kind, else 1.
     */
    double progress(LegProgress leg, List<LegProgress> all) {
        List<LegProgress> alike =
                all.stream().filter(one -> one.leg().kind() == leg.leg().kind()).toList();
        Mean own = settled(List.of(leg), true);
        if (own.count * leg.step() >= ENOUGH) {
            return own.mean();
        }
        Mean ofKind = settled(alike, true);
        if (ofKind.count * leg.step() >= ENOUGH) {
            return ofKind.mean();
        }
        Mean inPhases = settled(List.of(leg), false);
        if (inPhases.count > 0) {
            return inPhases.mean();
        }
        Mean elsewhere = settled(alike, false);
        return elsewhere.count > 0 ? elsewhere.mean() : 1;
    }

    private Mean settled(List<LegProgress> legs, boolean isSettled) {
        Mean mean = new Mean();
        for (LegProgress leg : legs) {
            sum(mean, leg, pieces.phases(), i -> isSettled && unsettled[i] ? Double.NaN : leg.made(i) / leg.wanted(i));
        }
        return mean;
    }

    /** Mean of the known values of a function of the instant over the phases of a leg, NaN without any. */
    static double mean(LegProgress leg, List<Phase> phases, IntToDoubleFunction value) {
        Mean mean = new Mean();
        sum(mean, leg, phases, value);
        return mean.mean();
    }

    private static void sum(Mean mean, LegProgress leg, List<Phase> phases, IntToDoubleFunction value) {
        for (Phase phase : phases) {
            if (!phase.span().overlaps(leg.leg().span())) {
                continue;
            }
            for (int i = phase.span().from(); i < phase.span().to(); i++) {
                mean.add(value.applyAsDouble(i));
            }
        }
    }

    private static final class Mean {
        private double sum;
        private int count;

        void add(double value) {
            if (!Double.isNaN(value)) {
                sum += value;
                count++;
            }
        }

        double mean() {
            return count == 0 ? Double.NaN : sum / count;
        }
    }
}
