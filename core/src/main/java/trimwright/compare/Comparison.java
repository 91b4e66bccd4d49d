package trimwright.compare;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.segment.Leg;
import trimwright.segment.Phase;
import trimwright.segment.Pieces;
import trimwright.segment.Turn;
import trimwright.wind.WindTrack;

/**
 * One boat against a reference.
 *
 * @param reference name of the reference in files
 * @param phases one for each phase, in their order
 * @param ledgers one for each leg, in their order
 * @param secondsToReference for each turn the time from its start until progress was 95 % of the reference's for 2 s,
 *     null where that was not within 60 s, or where there is no reference
 */
public record Comparison(
        String reference,
        List<PhaseResult> phases,
        List<LegLedger> ledgers,
        List<@Nullable Double> secondsToReference) {
    private static final double BACK = 0.95;
    private static final double BACK_FOR = 2.0;
    private static final double LONGEST = 60.0;

    /** Without a model of trim, and without other boats. */
    public static Comparison of(WindTrack track, Pieces pieces, Reference reference) {
        return of(track, pieces, reference, SpeedLosses.none(track.size()));
    }

    /** @param losses what the model says of trim, attitude and others' wakes */
    public static Comparison of(WindTrack track, Pieces pieces, Reference reference, SpeedLosses losses) {
        List<LegProgress> legs = pieces.legs().stream()
                .map(leg -> new LegProgress(track, leg, reference, losses))
                .toList();
        List<PhaseResult> phases = new ArrayList<>();
        for (Phase phase : pieces.phases()) {
            phases.add(PhaseJudge.of(legAt(legs, phase.span().from()), phase));
        }
        Steady steady = new Steady(legs, pieces);
        List<LegLedger> ledgers = new ArrayList<>();
        for (LegProgress leg : legs) {
            ledgers.add(new LedgerBook(leg, pieces, losses, steady).keep());
        }
        List<@Nullable Double> back = new ArrayList<>();
        for (Turn turn : pieces.turns()) {
            back.add(secondsToReference(legs, turn));
        }
        return new Comparison(reference.key(), phases, ledgers, back);
    }

    private static LegProgress legAt(List<LegProgress> legs, int i) {
        for (LegProgress leg : legs) {
            if (leg.leg().span().contains(i)) {
                return leg;
            }
        }
        throw new IllegalStateException("a phase outside every leg at instant " + i);
    }

    private static @Nullable Double secondsToReference(List<LegProgress> legs, Turn turn) {
        int end = turn.span().to();
        for (LegProgress leg : legs) {
            Leg on = leg.leg();
            if (!on.span().contains(end)) {
                continue;
            }
            int window = Math.max(1, (int) Math.round(BACK_FOR / leg.step()));
            int last = Math.min(on.span().to() - window, turn.span().from() + (int) Math.round(LONGEST / leg.step()));
            for (int i = end; i < last; i++) {
                double made = 0;
                double wanted = 0;
                for (int k = i; k < i + window; k++) {
                    made += leg.made(k);
                    wanted += leg.wanted(k);
                }
                if (made >= BACK * wanted) {
                    return (i - turn.span().from()) * leg.step();
                }
            }
        }
        return null;
    }
}
