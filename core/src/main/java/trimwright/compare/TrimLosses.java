package trimwright.compare;

import java.util.Arrays;
import trimwright.air.TrueWind;
import trimwright.segment.Phase;
import trimwright.segment.Pieces;
import trimwright.segment.Tack;
import trimwright.units.Angles;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * What trim and attitude cost in each instant of steady sailing, from means over 20 s (chosen: the wing is worked against
 * gusts, and the target is that of a steady wind). Elsewhere, and where trim is not logged, it is not known.
 */
public final class TrimLosses {
    private static final double WINDOW = 20;

    private final WindTrack track;
    private final TrimTable table;
    private final double[] trim;
    private final double[] attitude;

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
        for (Phase phase : pieces.phases()) {
            losses.judge(phase);
        }
        return new SpeedLosses(losses.trim, losses.attitude, clearWind);
    }

    private void judge(Phase phase) {
        int window = track.clock().steps(WINDOW);
        int from = phase.span().from();
        int blocks = Math.max(1, phase.span().length() / window);
        for (int b = 0; b < blocks; b++) {
            int begin = from + b * phase.span().length() / blocks;
            int end = from + (b + 1) * phase.span().length() / blocks;
            judge(phase, begin, end);
        }
    }

    private void judge(Phase phase, int from, int to) {
        int tack = phase.tack().sign();
        double tws = track.mean(Quantity.TWS, from, to);
        double twa = track.mean(Quantity.COURSE_TWA, from, to);
        Trim measured = new Trim(
                incidence(phase.tack(), from, to),
                tack * track.mean(Quantity.CAMBER, from, to),
                tack * track.mean(Quantity.TWIST, from, to),
                tack * track.mean(Quantity.ROLL, from, to),
                track.mean(Quantity.RIDE_HEIGHT, from, to));
        if (Double.isNaN(tws) || Double.isNaN(twa)) {
            return;
        }
        TrimTable.Loss loss = table.loss(phase.kind(), tws, twa, measured);
        if (loss != null) {
            boolean isLogged = !Double.isNaN(measured.incidence() + measured.camber() + measured.twist());
            Arrays.fill(trim, from, to, isLogged ? loss.trim() : Double.NaN);
            Arrays.fill(attitude, from, to, loss.attitude());
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
