package trimwright.learned;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.response.ReachableSpeed;
import trimwright.response.SpeedResponse;
import trimwright.segment.Phase;
import trimwright.segment.Pieces;
import trimwright.segment.Turn;
import trimwright.target.Branch;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.units.Circular;
import trimwright.wind.Quantity;
import trimwright.wind.WindCorrection;
import trimwright.wind.WindTrack;

/** Cuts steady foiling of one boat in one session into blocks. */
public final class SteadyBlocks {
    /** Length of a block (s): chosen, some times a boat's response. */
    private static final int BLOCK = 30;

    /** Less of a block at the end of a phase is left out (s): chosen. */
    private static final int LEAST = 10;

    /** From the end of a turn or a spell off the foils until a boat is settled (s): as for what trim costs. */
    private static final double SETTLING = 30;

    /** Steps for slopes: of wind (-) and angle (rad), chosen. */
    private static final double WIND_STEP = 0.02;

    private static final double ANGLE_STEP = Math.toRadians(1);

    /** Of a sensor that was not made to agree: as much as is taken beforehand where one is (rad, rad, -). */
    private static final SensorDoubt.Errors UNTOLD = new SensorDoubt.Errors(Math.toRadians(3), Math.toRadians(3), 0.03);

    /** What agreement leaves of angles (rad) and factor (-), for upwash does not quite follow its formula: chosen. */
    private static final double LEAST_ERROR = Math.toRadians(0.5);

    private static final double LEAST_FACTOR = 0.01;

    /** Below this share of the slowest foiling target a boat counts as off her foils (-): chosen, as for turns. */
    private static final double HOVER = 0.8;

    private final int session;
    private final WindTrack track;
    private final Pieces pieces;
    private final TargetBook book;
    private final double[] speeds;
    private final double[] reachable;

    private SteadyBlocks(int session, WindTrack track, Pieces pieces, TargetBook book, SpeedResponse response) {
        this.session = session;
        this.track = track;
        this.pieces = pieces;
        this.book = book;
        int second = track.clock().steps(1);
        int seconds = track.size() / second;
        speeds = new double[seconds];
        reachable = new double[seconds];
        ReachableSpeed reached = new ReachableSpeed(response);
        for (int s = 0; s < seconds; s++) {
            speeds[s] = track.mean(Quantity.SPEED, s * second, (s + 1) * second);
            double wind = track.get(Quantity.TWS, s * second);
            double angle = track.get(Quantity.COURSE_TWA, s * second);
            reachable[s] = reached.step(speeds[s], target(wind, angle), wind, angle, 1);
        }
    }

    /**
     * The blocks of a boat.
     *
     * @param session its number within the season
     * @param book the model's targets of that boat and wing
     */
    public static List<SteadyBlock> of(
            int session, WindTrack track, Pieces pieces, TargetBook book, SpeedResponse response) {
        return new SteadyBlocks(session, track, pieces, book, response).cut();
    }

    private double target(double wind, double angle) {
        if (Double.isNaN(wind) || Double.isNaN(angle)) {
            return Double.NaN;
        }
        Target target = book.find(Branch.FOILING, wind, angle).target();
        return target == null ? Double.NaN : target.boatSpeed();
    }

    private List<SteadyBlock> cut() {
        int second = track.clock().steps(1);
        boolean[] settled = settled(second);
        List<SteadyBlock> blocks = new ArrayList<>();
        for (Phase phase : pieces.phases()) {
            int from = (phase.span().from() + second - 1) / second;
            int to = Math.min(speeds.length, phase.span().to() / second);
            for (int at = from; at < to; at += BLOCK) {
                add(blocks, phase, at, Math.min(to, at + BLOCK), settled);
            }
        }
        return blocks;
    }

    private boolean[] settled(int second) {
        boolean[] settled = new boolean[speeds.length];
        Arrays.fill(settled, true);
        double settling = SETTLING * second;
        for (Turn turn : pieces.turns()) {
            unsettle(settled, turn.span().from(), turn.span().to() + settling, second);
        }
        pieces.offFoil()
                .forEach(spell ->
                        unsettle(settled, spell.span().from(), spell.span().to() + settling, second));
        return settled;
    }

    private static void unsettle(boolean[] settled, int from, double to, int second) {
        for (int s = from / second; s < Math.min(settled.length, to / second); s++) {
            settled[s] = false;
        }
    }

    private void add(List<SteadyBlock> blocks, Phase phase, int from, int to, boolean[] settled) {
        double made = 0;
        double wanted = 0;
        int count = 0;
        int second = track.clock().steps(1);
        double winds = 0;
        List<Double> angles = new ArrayList<>();
        for (int s = from; s < to; s++) {
            double wind = track.get(Quantity.TWS, s * second);
            double angle = track.get(Quantity.COURSE_TWA, s * second);
            if (settled[s] && speeds[s] > book.slowestFoiling() * HOVER && !Double.isNaN(reachable[s] + wind + angle)) {
                made += speeds[s];
                wanted += reachable[s];
                winds += wind;
                angles.add(Math.abs(angle));
                count++;
            }
        }
        if (count < LEAST) {
            return;
        }
        double wind = winds / count;
        double angle =
                Circular.mean(angles.stream().mapToDouble(Double::doubleValue).toArray(), 0, count);
        double byWind = (StrictMath.log(target(wind * (1 + WIND_STEP), angle))
                        - StrictMath.log(target(wind * (1 - WIND_STEP), angle)))
                / (2 * WIND_STEP);
        double byAngle =
                (StrictMath.log(target(wind, angle + ANGLE_STEP)) - StrictMath.log(target(wind, angle - ANGLE_STEP)))
                        / (2 * ANGLE_STEP);
        double ratio = StrictMath.log(made / wanted);
        // At the edge of the book it has no slope: what a session's wind is off could not be told there.
        if (Double.isFinite(byWind + byAngle + ratio)) {
            SensorDoubt doubt =
                    SensorDoubt.of(wind, angle, phase.tack().sign(), made / count, errors(), byWind, byAngle);
            blocks.add(new SteadyBlock(session, wind, angle, ratio, count, doubt));
        }
    }

    private SensorDoubt.Errors errors() {
        WindCorrection correction = track.correction();
        if (correction.isNone()) {
            return UNTOLD;
        }
        WindCorrection.Errors found = correction.errors();
        return new SensorDoubt.Errors(
                StrictMath.hypot(found.angle(), LEAST_ERROR),
                StrictMath.hypot(found.upwash(), LEAST_ERROR),
                StrictMath.hypot(found.factor(), LEAST_FACTOR));
    }
}
