package trimwright.debrief;

import java.util.Arrays;
import trimwright.segment.Leg;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetLookup;
import trimwright.track.Channel;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * The boat speed to aim at, sample by sample, for charts: upwind and downwind that of the best VMG in the wind of the
 * moment, on a reach that at the angle sailed. It is drawn, not judged by: judged is progress.
 */
public final class TargetSpeeds {
    public static final String PATH = DebriefSeries.PREFIX + "target_speed";

    private TargetSpeeds() {}

    /** On the track's clock (m/s); NaN outside legs and where the book has no target. */
    public static Channel of(BoatDebrief boat, TargetBook book) {
        WindTrack wind = boat.wind();
        double[] speeds = new double[wind.size()];
        Arrays.fill(speeds, Double.NaN);
        for (Leg leg : boat.pieces().legs()) {
            for (int i = leg.span().from(); i < leg.span().to(); i++) {
                double tws = wind.get(Quantity.TWS, i);
                double angle = wind.get(Quantity.COURSE_TWA, i);
                if (!Double.isNaN(tws) && !Double.isNaN(angle)) {
                    speeds[i] = speed(leg, book, tws, angle);
                }
            }
        }
        return Channel.of(PATH, speeds);
    }

    private static double speed(Leg leg, TargetBook book, double tws, double angle) {
        TargetLookup lookup = switch (leg.kind()) {
            case UPWIND -> book.findUpwind(tws);
            case DOWNWIND -> book.findDownwind(tws);
            case REACHING -> book.find(tws, angle);
        };
        Target target = lookup.target();
        return target == null ? Double.NaN : target.boatSpeed();
    }
}
