package trimwright.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import trimwright.segment.OffFoil;
import trimwright.segment.Pieces;
import trimwright.segment.Span;
import trimwright.segment.Turn;
import trimwright.segment.TurnLabel;

/**
 * Keeps the time ledger of a leg. With progress p and the reference's progress p*, the total is the integral of
 * 1 - p/p*; a ladder of rates r0 = p, r1, ..., p* splits it into lines, the integrals of (r_i - r_(i-1))/p*, which add up
 * by telescoping. Instants without p* go whole into one line. What each rung does: docs/theory/analysis.md.
 */
final class LedgerBook {
    private static final List<Cause> LADDER = List.of(
            Cause.OFF_FOIL,
            Cause.TURNS_FREE,
            Cause.TURNS_FORCED,
            Cause.OTHER_AIR,
            Cause.TRIM,
            Cause.HEEL_HEIGHT,
            Cause.ANGLE);

    /** Which cause, if any, holds the boat down at an instant. */
    private static final byte SAILING = 0;

    private static final byte TURNING_FREELY = 1;
    private static final byte TURNING_FORCED = 2;

    /** Longest time after a turn or a spell off the foils in which speed is taken to be gathered because of it (s): chosen. */
    private static final double GATHERING = 40;

    /** Time over which progress has to be the boat's own steady one for speed to be back (s): chosen. */
    private static final double BACK_FOR = 5;

    private final LegProgress progress;
    private final boolean[] offFoil;
    private final byte[] turning;
    private final double[] trim;
    private final double[] attitude;
    private final double[] wake;
    private final double[] angle;
    private final double steady;

    /** @param settled how the boat sails when it sails steadily */
    LedgerBook(LegProgress progress, Pieces pieces, SpeedLosses losses, Steady settled) {
        this.progress = progress;
        int from = progress.leg().span().from();
        int n = progress.leg().span().length();
        offFoil = new boolean[n];
        turning = new byte[n];
        steady = settled.progress(progress);
        mark(pieces, from, n);
        double meanTrim = orZero(settled.mean(progress, (on, i) -> losses.trim(i)));
        double meanAttitude = orZero(settled.mean(progress, (on, i) -> losses.attitude(i)));
        double meanWake = orZero(settled.mean(progress, LedgerBook::logWake));
        double meanAngle = orZero(settled.mean(progress, (on, i) -> angleGap(on, i) / on.wanted(i)));
        trim = new double[n];
        attitude = new double[n];
        wake = new double[n];
        angle = new double[n];
        for (int k = 0; k < n; k++) {
            int i = from + k;
            // Put back to its own steady progress, the boat lacks what it lacked when it sailed steadily.
            boolean held = offFoil[k] || turning[k] != SAILING;
            trim[k] = held || Double.isNaN(losses.trim(i)) ? meanTrim : losses.trim(i);
            attitude[k] = held || Double.isNaN(losses.attitude(i)) ? meanAttitude : losses.attitude(i);
            wake[k] = held ? meanWake : orZero(logWake(progress, i));
            angle[k] = held ? meanAngle * progress.wanted(i) : orZero(angleGap(progress, i));
        }
    }

    private void mark(Pieces pieces, int from, int n) {
        for (Turn turn : pieces.turns()) {
            TurnLabel label = turn.label();
            byte kind = label != null && label.isForced() ? TURNING_FORCED : TURNING_FREELY;
            fill(turn.span().from() - from, steadyFrom(until(turn), pieces) - from, n, k -> turning[k] = kind);
        }
        for (OffFoil spell : pieces.offFoil()) {
            int first = spell.span().from() - from;
            byte cause = first >= 0 && first < n ? turning[first] : SAILING;
            // Who comes down in a turn is down because of it.
            fill(first, steadyFrom(spell.span().to(), pieces) - from, n, k -> {
                if (cause != SAILING) {
                    turning[k] = cause;
                } else {
                    offFoil[k] |= turning[k] == SAILING;
                }
            });
        }
    }

    /** Where VMG was back after a turn, or where it ended, if that cannot be told. */
    private static int until(Turn turn) {
        Turn.Recovery recovery = turn.recovery();
        return recovery == null ? turn.span().to() : Math.max(turn.span().to(), recovery.until());
    }

    /** From there on speed is gathered: until progress is the boat's own steady one again, or the next turn begins. */
    private int steadyFrom(int until, Pieces pieces) {
        Span leg = progress.leg().span();
        int latest = Math.min(leg.to(), until + (int) Math.round(GATHERING / progress.step()));
        for (Turn turn : pieces.turns()) {
            if (turn.span().from() >= until) {
                latest = Math.min(latest, turn.span().from());
            }
        }
        int window = Math.max(1, (int) Math.round(BACK_FOR / progress.step()));
        for (int i = Math.max(leg.from(), until); i < latest; i++) {
            if (isBack(i, Math.min(leg.to(), i + window))) {
                return i;
            }
        }
        return Math.max(until, latest);
    }

    private boolean isBack(int from, int to) {
        double made = 0;
        double wanted = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(progress.made(i)) && !Double.isNaN(progress.wanted(i))) {
                made += progress.made(i);
                wanted += progress.wanted(i);
            }
        }
        return made >= steady * wanted;
    }

    private interface Marker {
        void mark(int k);
    }

    private static void fill(int from, int to, int n, Marker marker) {
        for (int k = Math.max(0, from); k < Math.min(n, to); k++) {
            marker.mark(k);
        }
    }

    private static double logWake(LegProgress progress, int i) {
        return StrictMath.log(progress.wanted(i) / progress.wantedInWake(i));
    }

    private static double angleGap(LegProgress progress, int i) {
        return progress.wanted(i) - progress.wantedAtAngle(i);
    }

    private static double orZero(double value) {
        return Double.isNaN(value) ? 0 : value;
    }

    LegLedger keep() {
        double[][] losses = climb(LADDER);
        int causes = Cause.values().length;
        double[] least = new double[causes];
        double[] most = new double[causes];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(most, Double.NEGATIVE_INFINITY);
        for (List<Cause> order : orders()) {
            double[][] other = climb(order);
            for (int c = 0; c < causes; c++) {
                double sum = Arrays.stream(other[c]).sum();
                least[c] = Math.min(least[c], sum);
                most[c] = Math.max(most[c], sum);
            }
        }
        List<LegLedger.Line> lines = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            double[] of = losses[cause.ordinal()];
            lines.add(new LegLedger.Line(
                    cause,
                    Arrays.stream(of).sum(),
                    least[cause.ordinal()],
                    most[cause.ordinal()],
                    LossPieces.of(of, progress.leg().span().from(), progress.step())));
        }
        double[] all = new double[trim.length];
        for (int k = 0; k < all.length; k++) {
            double ratio = progress.made(progress.leg().span().from() + k)
                    / progress.wanted(progress.leg().span().from() + k);
            all[k] = Double.isNaN(ratio) ? progress.step() : (1 - ratio) * progress.step();
        }
        return new LegLedger(progress.leg(), Arrays.stream(all).sum(), lines, new LossSeries(all));
    }

    /** The ladder begun at each of its rungs, upwards and downwards. */
    private static List<List<Cause>> orders() {
        List<List<Cause>> orders = new ArrayList<>();
        for (int first = 0; first < LADDER.size(); first++) {
            List<Cause> order = new ArrayList<>(LADDER);
            Collections.rotate(order, first);
            orders.add(order);
            List<Cause> backwards = new ArrayList<>(order);
            Collections.reverse(backwards);
            orders.add(backwards);
        }
        return orders;
    }

    /** Seconds lost by cause and instant when the rungs are climbed in that order. */
    private double[][] climb(List<Cause> order) {
        double[][] loss = new double[Cause.values().length][trim.length];
        for (int k = 0; k < trim.length; k++) {
            int i = progress.leg().span().from() + k;
            double p = progress.made(i);
            double wanted = progress.wanted(i);
            if (Double.isNaN(p) || Double.isNaN(wanted)) {
                loss[Cause.UNJUDGED.ordinal()][k] = progress.step();
                continue;
            }
            double seconds = progress.step() / wanted;
            double rate = p;
            boolean isPutBack = false;
            for (Cause cause : order) {
                double next = rate + gain(cause, k, rate, isPutBack ? 0 : steady * wanted - p);
                isPutBack |= holds(cause, k);
                loss[cause.ordinal()][k] = (next - rate) * seconds;
                rate = next;
            }
            loss[Cause.REMAINING.ordinal()][k] = (wanted - rate) * seconds;
        }
        return loss;
    }

    /** What a rung adds to the rate. */
    private double gain(Cause cause, int k, double rate, double toSteady) {
        return switch (cause) {
            case OFF_FOIL, TURNS_FREE, TURNS_FORCED -> holds(cause, k) ? toSteady : 0;
            case OTHER_AIR -> rate * (StrictMath.exp(wake[k]) - 1);
            case TRIM -> rate * (StrictMath.exp(trim[k]) - 1);
            case HEEL_HEIGHT -> rate * (StrictMath.exp(attitude[k]) - 1);
            case ANGLE -> angle[k];
            case UNJUDGED, REMAINING -> 0;
        };
    }

    private boolean holds(Cause cause, int k) {
        return cause == Cause.OFF_FOIL && offFoil[k]
                || cause == Cause.TURNS_FREE && turning[k] == TURNING_FREELY
                || cause == Cause.TURNS_FORCED && turning[k] == TURNING_FORCED;
    }
}
