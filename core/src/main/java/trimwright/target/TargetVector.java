package trimwright.target;

import java.util.Arrays;
import java.util.Set;

/** A target's numbers (SI) as one row, so that all of them are interpolated, written and read alike. */
public final class TargetVector {
    private static final int BEFORE_COSTS = 28;

    /** How many numbers a row has; the last is the true wind angle. */
    static final int SIZE = BEFORE_COSTS + CostVector.SIZE + 1;

    static final int SPEED = 0;
    static final int MADE_GOOD = 1;

    private static final int ANGLE = SIZE - 1;

    private TargetVector() {}

    /** The row of a solved point. */
    public static double[] of(TargetPoint point) {
        Target t = point.getTarget();
        double[] row = Arrays.copyOf(withoutCosts(t), SIZE);
        CostVector.put(t.bands().costs(), row, BEFORE_COSTS);
        row[ANGLE] = point.trueWindAngle();
        return row;
    }

    private static double[] withoutCosts(Target t) {
        TrimSetting trim = t.trim();
        TrimBands bands = t.bands();
        Attitude a = t.attitude();
        Loads l = t.loads();
        return new double[] {
            t.boatSpeed(),
            t.velocityMadeGood(),
            t.apparentWindAngle(),
            t.apparentWindSpeed(),
            trim.camber(),
            trim.twist(),
            trim.twistMidRatio(),
            trim.sheet(),
            bands.camber().low(),
            bands.camber().high(),
            bands.twist().low(),
            bands.twist().high(),
            bands.sheet().low(),
            bands.sheet().high(),
            a.heel(),
            a.rideHeight(),
            a.leeway(),
            a.pitch(),
            a.rudder(),
            a.mainRake(),
            a.elevator(),
            a.elevatorDifferential(),
            l.sheetLoad(),
            l.turningMoment(),
            l.rightingMoment(),
            l.rightingMomentRatio(),
            l.sideForce(),
            l.drive()
        };
    }

    static double angle(double[] v) {
        return v[ANGLE];
    }

    /** The target of a row; its limits and caveats are not numbers and stand beside it. */
    public static Target toTarget(double[] v, Set<TargetLimit> limits, Set<TargetCaveat> caveats) {
        return new Target(
                v[0],
                v[1],
                v[2],
                v[3],
                new TrimSetting(v[4], v[5], v[6], v[7]),
                new TrimBands(band(v[8], v[9]), band(v[10], v[11]), band(v[12], v[13]), CostVector.at(v, BEFORE_COSTS)),
                new Attitude(v[14], v[15], v[16], v[17], v[18], v[19], v[20], v[21]),
                new Loads(v[22], v[23], v[24], v[25], v[26], v[27]),
                limits,
                caveats);
    }

    /** A narrow band may turn over between nodes by rounding or overshoot; then its ends are taken in order. */
    static Band band(double low, double high) {
        return new Band(Math.min(low, high), Math.max(low, high));
    }
}
