package trimwright.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.air.TrueWind;
import trimwright.segment.Phase;
import trimwright.segment.Pieces;
import trimwright.segment.PointOfSail;
import trimwright.segment.Tack;
import trimwright.units.Angles;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * What trim and attitude cost in each instant of steady sailing: the price of their means over 10 s (chosen on branches of
 * simulated days: about as long as a boat's speed takes to answer). What swings faster has its price before the boat has felt
 * it, and no crew can keep a wing from it. Elsewhere, and where trim is not logged, it is not known.
 *
 * <p>What a gauge shows otherwise on one tack than on the other, both against the target, is taken for half its zero error
 * each and left out: where a price is curved, a zero error costs on both tacks.
 */
public final class TrimLosses {
    private static final double WINDOW = 10;

    /** Less steady sailing than this on one of the tacks tells no zero error (s): chosen. */
    private static final double ENOUGH = 60;

    private final WindTrack track;
    private final TrimTable table;
    private final double[] trim;
    private final double[] attitude;

    /** A stretch of a phase with its means. */
    private record Block(Phase phase, int from, int to, double tws, double twa, Trim measured, Trim wanted) {}

    private TrimLosses(WindTrack track, TrimTable table) {
        this.track = track;
        this.table = table;
        trim = new double[track.size()];
        attitude = new double[track.size()];
        Arrays.fill(trim, Double.NaN);
        Arrays.fill(attitude, Double.NaN);
    }

    /**
     * The losses of a boat.
     *
     * @param clearWind wind speed without other boats over that with them (-)
     */
    public static SpeedLosses of(WindTrack track, Pieces pieces, TrimTable table, double[] clearWind) {
        TrimLosses losses = new TrimLosses(track, table);
        for (PointOfSail kind : PointOfSail.values()) {
            List<Block> blocks = pieces.phases().stream()
                    .filter(phase -> phase.kind() == kind)
                    .flatMap(phase -> losses.blocks(phase).stream())
                    .toList();
            Trim zero = losses.zeroError(blocks);
            blocks.forEach(block -> losses.judge(block, zero));
        }
        return new SpeedLosses(losses.trim, losses.attitude, clearWind);
    }

    private List<Block> blocks(Phase phase) {
        int from = phase.span().from();
        int count = Math.max(1, phase.span().length() / track.clock().steps(WINDOW));
        List<Block> blocks = new ArrayList<>();
        for (int b = 0; b < count; b++) {
            int begin = from + b * phase.span().length() / count;
            int end = from + (b + 1) * phase.span().length() / count;
            double tws = track.mean(Quantity.TWS, begin, end);
            double twa = track.mean(Quantity.COURSE_TWA, begin, end);
            Trim wanted = Double.isNaN(tws) || Double.isNaN(twa) ? null : table.wanted(phase.kind(), tws, twa);
            if (wanted != null) {
                blocks.add(new Block(phase, begin, end, tws, twa, measured(phase.tack(), begin, end), wanted));
            }
        }
        return blocks;
    }

    private Trim measured(Tack tack, int from, int to) {
        int sign = tack.sign();
        return new Trim(
                incidence(tack, from, to),
                sign * track.mean(Quantity.CAMBER, from, to),
                sign * track.mean(Quantity.TWIST, from, to),
                sign * track.mean(Quantity.ROLL, from, to),
                track.mean(Quantity.RIDE_HEIGHT, from, to));
    }

    /** By how much gauges show too much on starboard and too little on port tack; nothing where one tack is too short. */
    private Trim zeroError(List<Block> blocks) {
        double[] zero = new double[Trim.SIZE];
        for (int i = 0; i < Trim.SIZE; i++) {
            double[] sum = new double[2];
            double[] seconds = new double[2];
            for (Block block : blocks) {
                int tack = block.phase().tack() == Tack.STARBOARD ? 0 : 1;
                double off = block.measured().toArray()[i] - block.wanted().toArray()[i];
                if (!Double.isNaN(off)) {
                    double length = (block.to() - block.from()) * track.clock().step();
                    sum[tack] += off * length;
                    seconds[tack] += length;
                }
            }
            boolean isTold = Math.min(seconds[0], seconds[1]) >= ENOUGH;
            zero[i] = isTold ? (sum[0] / seconds[0] - sum[1] / seconds[1]) / 2 : 0;
        }
        // A height has no side.
        return new Trim(zero[0], zero[1], zero[2], zero[3], 0);
    }

    private void judge(Block block, Trim zero) {
        Trim measured = block.measured().less(zero, block.phase().tack().sign());
        TrimTable.Loss loss = table.loss(block.phase().kind(), block.tws(), block.twa(), measured, block.wanted());
        if (loss != null) {
            boolean isLogged = !Double.isNaN(measured.incidence() + measured.camber() + measured.twist());
            Arrays.fill(trim, block.from(), block.to(), isLogged ? loss.trim() : Double.NaN);
            Arrays.fill(attitude, block.from(), block.to(), loss.attitude());
        }
    }

    /** Mean angle of the smoothed apparent wind to the main element, free of the tack. */
    private double incidence(Tack tack, int from, int to) {
        double sum = 0;
        int count = 0;
        for (int i = from; i < to; i++) {
            double drift = Angles.difference(track.get(Quantity.COURSE, i), track.get(Quantity.HEADING, i));
            double speed = track.get(Quantity.SPEED, i);
            TrueWind wind = new TrueWind(track.get(Quantity.TWS, i), track.get(Quantity.TWA, i));
            double felt = wind.apparent(speed * StrictMath.cos(drift), speed * StrictMath.sin(drift))
                    .angle();
            double incidence = tack.sign() * (felt - track.get(Quantity.SHEET, i));
            if (!Double.isNaN(incidence)) {
                sum += incidence;
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }
}
