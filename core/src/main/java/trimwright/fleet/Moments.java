package trimwright.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.segment.Phase;
import trimwright.segment.Pieces;
import trimwright.segment.PointOfSail;
import trimwright.segment.Tack;
import trimwright.units.Angles;
import trimwright.units.Median;
import trimwright.wind.Quantity;
import trimwright.wind.SessionClock;
import trimwright.wind.WindTrack;

/**
 * Seconds in which two boats or more sailed steadily on the same tack and point of sail in a like wind: who was there, and what
 * each did. A boat whose wind is not that of the others of the moment is left out of it.
 */
final class Moments {
    /** Most by which a boat's wind may stand off the middle of the others' (-, rad): chosen, about what sensors leave. */
    private static final double WIND_SPREAD = 0.12;

    private static final double WIND_TURN = Math.toRadians(10);

    /** Half of the time over which heel's mean is taken (s). */
    private static final double SWING_HALF = 10;

    private final List<WindTrack> tracks;
    private final SessionClock clock;
    private final PointOfSail on;
    private final int second;
    private final List<Moment> moments = new ArrayList<>();
    private final double[] windMean;

    /**
     * One second of one tack.
     *
     * @param at instant of the clock at which it begins
     * @param boats indices of those compared, rising
     * @param wind middle of their winds (m/s)
     * @param from where that wind comes from (rad)
     */
    record Moment(int at, Tack tack, int[] boats, double wind, double from) {}

    Moments(List<WindTrack> tracks, List<Pieces> pieces, PointOfSail on) {
        this.tracks = tracks;
        this.on = on;
        clock = tracks.get(0).clock();
        second = clock.steps(1);
        int count = clock.size() / second;
        Tack[][] steady = new Tack[tracks.size()][count];
        for (int b = 0; b < tracks.size(); b++) {
            for (Phase phase : pieces.get(b).phases()) {
                if (phase.kind() == on) {
                    int first = (phase.span().from() + second - 1) / second;
                    int end = Math.min(count, phase.span().to() / second);
                    Arrays.fill(steady[b], Math.min(first, end), end, phase.tack());
                }
            }
        }
        for (int s = 0; s < count; s++) {
            for (Tack tack : Tack.values()) {
                add(s, tack, steady);
            }
        }
        windMean = windMeans();
    }

    private double[] windMeans() {
        double[] sum = new double[tracks.size()];
        int[] count = new int[sum.length];
        for (Moment moment : moments) {
            for (int boat : moment.boats()) {
                double off = windOff(moment, boat);
                if (!Double.isNaN(off)) {
                    sum[boat] += off;
                    count[boat]++;
                }
            }
        }
        for (int b = 0; b < sum.length; b++) {
            sum[b] = count[b] == 0 ? 0 : sum[b] / count[b];
        }
        return sum;
    }

    private void add(int s, Tack tack, Tack[][] steady) {
        int at = s * second;
        int[] there = new int[tracks.size()];
        double[] winds = new double[tracks.size()];
        double[] froms = new double[tracks.size()];
        int n = 0;
        for (int b = 0; b < tracks.size(); b++) {
            double wind = tracks.get(b).get(Quantity.TWS, at);
            double from = tracks.get(b).get(Quantity.TWD, at);
            if (steady[b][s] == tack && !Double.isNaN(wind) && !Double.isNaN(from)) {
                there[n] = b;
                winds[n] = wind;
                froms[n++] = from;
            }
        }
        if (n < 2) {
            return;
        }
        double middle = Median.of(Arrays.copyOf(winds, n));
        double reference = froms[0];
        double[] turned = new double[n];
        for (int i = 0; i < n; i++) {
            turned[i] = Angles.difference(froms[i], reference);
        }
        double turn = Median.of(Arrays.copyOf(turned, n));
        int[] alike = new int[n];
        int kept = 0;
        for (int i = 0; i < n; i++) {
            if (Math.abs(winds[i] - middle) <= WIND_SPREAD * middle && Math.abs(turned[i] - turn) <= WIND_TURN) {
                alike[kept++] = there[i];
            }
        }
        if (kept >= 2) {
            moments.add(new Moment(at, tack, Arrays.copyOf(alike, kept), middle, reference + turn));
        }
    }

    List<Moment> all() {
        return moments;
    }

    int boats() {
        return tracks.size();
    }

    SessionClock clock() {
        return clock;
    }

    PointOfSail on() {
        return on;
    }

    /** Own wind less the middle of the moment's, less the mean of that (m/s): what a boat's stands off on average may be its gauge. */
    double windChange(Moment moment, int boat) {
        return windOff(moment, boat) - windMean[boat];
    }

    private double windOff(Moment moment, int boat) {
        return tracks.get(boat).mean(Quantity.TWS, moment.at(), moment.at() + second) - moment.wind();
    }

    /** What a boat did in a moment, in the question's unit; NaN where it is not logged. */
    double value(Question question, Moment moment, int boat) {
        WindTrack track = tracks.get(boat);
        int from = moment.at();
        int to = from + second;
        int sign = moment.tack().sign();
        return switch (question) {
            case PROGRESS -> progress(track, moment, to);
            case ANGLE -> Math.abs(Angles.difference(moment.from(), track.mean(Quantity.COURSE, from, to)));
            case CAMBER -> sign * track.mean(Quantity.CAMBER, from, to);
            case TWIST -> sign * track.mean(Quantity.TWIST, from, to);
            case INCIDENCE -> sign * (track.mean(Quantity.AWA, from, to) - track.mean(Quantity.SHEET, from, to));
            case HEEL -> sign * track.mean(Quantity.ROLL, from, to);
            case HEEL_SWING -> swing(track, from, to);
            case RIDE_HEIGHT -> track.mean(Quantity.RIDE_HEIGHT, from, to);
            case SHEET_LOAD -> track.mean(Quantity.SHEET_LOAD, from, to);
            case TURN -> Double.NaN;
        };
    }

    /** Against the wind that the boats share: a vane of its own would make its own progress. */
    private double progress(WindTrack track, Moment moment, int to) {
        double sum = 0;
        int count = 0;
        for (int i = moment.at(); i < to; i++) {
            double made = track.get(Quantity.SPEED, i)
                    * StrictMath.cos(Angles.difference(track.get(Quantity.COURSE, i), moment.from()));
            if (!Double.isNaN(made)) {
                sum += made;
                count++;
            }
        }
        return count == 0 ? Double.NaN : on.windwardSign() * sum / count;
    }

    private double swing(WindTrack track, int from, int to) {
        int half = clock.steps(SWING_HALF);
        double mean = track.mean(Quantity.ROLL, Math.max(0, from - half), Math.min(clock.size(), to + half));
        return Math.abs(Angles.signed(track.mean(Quantity.ROLL, from, to) - mean));
    }
}
