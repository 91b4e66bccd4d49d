package trimwright.compare;

import trimwright.segment.Leg;
import trimwright.units.Angles;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/** Progress along one leg and what the reference makes of the same wind, instant by instant of the session clock. */
final class LegProgress {
    /** A reference slower than this (m/s) judges nothing (contract of the ledger). */
    private static final double LEAST_RATE = 0.5;

    private final Leg leg;
    private final double step;
    private final double[] made;
    private final double[] wanted;
    private final double[] wantedInWake;
    private final double[] wantedAtAngle;
    private final boolean[] doubtful;

    LegProgress(WindTrack track, Leg leg, Reference reference, SpeedLosses losses) {
        int n = leg.span().length();
        this.leg = leg;
        this.step = track.clock().step();
        this.made = new double[n];
        this.wanted = new double[n];
        this.wantedInWake = new double[n];
        this.wantedAtAngle = new double[n];
        this.doubtful = new boolean[n];
        for (int k = 0; k < n; k++) {
            int i = leg.span().from() + k;
            double inWake = track.get(Quantity.TWS, i);
            double tws = inWake * losses.clearWind(i);
            double offMark = Angles.difference(track.get(Quantity.COURSE, i), leg.course());
            double toMark = Angles.difference(track.get(Quantity.TWD, i), leg.course());
            made[k] = leg.kind().isJudgedByVmg()
                    ? track.get(Quantity.VMG, i) * leg.kind().windwardSign()
                    : track.get(Quantity.SPEED, i) * StrictMath.cos(offMark);
            boolean known = !Double.isNaN(tws) && !Double.isNaN(toMark) && !Double.isNaN(offMark);
            Reference.Rate rate = known ? reference.rate(leg.kind(), tws, toMark) : Reference.Rate.NONE;
            wanted[k] = rate.value() >= LEAST_RATE ? rate.value() : Double.NaN;
            wantedInWake[k] = wanted[k];
            if (known && inWake != tws) {
                double less = reference.rate(leg.kind(), inWake, toMark).value();
                wantedInWake[k] = less >= LEAST_RATE ? less : wanted[k];
            }
            doubtful[k] = rate.isDoubtful();
            wantedAtAngle[k] = known
                    ? reference.rateAtAngle(leg.kind(), tws, track.get(Quantity.COURSE_TWA, i), offMark)
                    : Double.NaN;
        }
    }

    Leg leg() {
        return leg;
    }

    /** Time between two instants (s). */
    double step() {
        return step;
    }

    /** Progress made good (m/s), NaN where unknown. */
    double made(int i) {
        return made[i - leg.span().from()];
    }

    /** Progress of the reference in the wind without other boats (m/s), NaN where it says nothing or too little. */
    double wanted(int i) {
        return wanted[i - leg.span().from()];
    }

    /** Progress of the reference in the wind that the boat had (m/s), NaN where it says nothing or too little. */
    double wantedInWake(int i) {
        return wantedInWake[i - leg.span().from()];
    }

    /** Progress of the reference at the angle sailed (m/s), NaN where it says nothing. */
    double wantedAtAngle(int i) {
        return wantedAtAngle[i - leg.span().from()];
    }

    boolean isDoubtful(int i) {
        return doubtful[i - leg.span().from()];
    }
}
