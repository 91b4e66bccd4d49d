package trimwright.compare;

import java.util.Arrays;
import java.util.List;
import trimwright.segment.OffFoil;
import trimwright.segment.Phase;
import trimwright.segment.Pieces;
import trimwright.segment.Span;
import trimwright.segment.Turn;

/**
 * How a boat sails when it sails steadily: means over phases, taken from where it has settled: some time after turns and spells off the foils, whose last effects would else pull it down.
 */
final class Steady {
    /** Time from the end of a turn or a spell off the foils until a boat counts as settled (s): chosen, see validation. */
    private static final double SETTLING = 30;

    /** Less settled sailing than this says nothing of a leg (s): chosen. */
    private static final double ENOUGH = 20;

    private final List<LegProgress> all;
    private final Pieces pieces;
    private final boolean[] unsettled;

    /** @param progress of the legs in which pieces were found */
    Steady(List<LegProgress> progress, Pieces pieces) {
        all = List.copyOf(progress);
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

    /** Something about an instant of a leg; NaN where it is not known. */
    interface Value {
        double at(LegProgress leg, int i);
    }

    /** Progress over that of the reference (-), 1 where nothing is known. */
    double progress(LegProgress leg) {
        double found = mean(leg, (on, i) -> on.made(i) / on.wanted(i));
        return Double.isNaN(found) ? 1 : found;
    }

    /**
     * Mean of what is known: of the leg where it was settled long enough, else of all legs of its kind, else from all
     * phases of the leg, else of its kind, else NaN.
     */
    double mean(LegProgress leg, Value value) {
        List<LegProgress> alike =
                all.stream().filter(one -> one.leg().kind() == leg.leg().kind()).toList();
        Mean own = mean(List.of(leg), value, true);
        if (own.count * leg.step() >= ENOUGH) {
            return own.mean();
        }
        Mean ofKind = mean(alike, value, true);
        if (ofKind.count * leg.step() >= ENOUGH) {
            return ofKind.mean();
        }
        Mean inPhases = mean(List.of(leg), value, false);
        return inPhases.count > 0 ? inPhases.mean() : mean(alike, value, false).mean();
    }

    private Mean mean(List<LegProgress> legs, Value value, boolean isSettled) {
        Mean mean = new Mean();
        for (LegProgress leg : legs) {
            for (Phase phase : pieces.phases()) {
                if (!phase.span().overlaps(leg.leg().span())) {
                    continue;
                }
                for (int i = phase.span().from(); i < phase.span().to(); i++) {
                    if (!isSettled || !unsettled[i]) {
                        mean.add(value.at(leg, i));
                    }
                }
            }
        }
        return mean;
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
