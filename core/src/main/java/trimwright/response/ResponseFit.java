package trimwright.response;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.SailingAims;
import trimwright.units.Units;
import trimwright.water.WaterState;

/**
 * Fits a boat's {@link SpeedResponse} to the motion model: she is sailed by the computed crew through steps of the wind.
 * Rise: the shortest time with which no rising step shows her more than {@link #MOST_UNDER} under in any ten seconds, at
 * least that of least squares. Fall: least squares. Winds in which she does not hold her target before and after a step say
 * nothing. Left out: waves, other boats' air, what a crew is worse than the computed one.
 */
public final class ResponseFit {
    /** Winds of the table (m/s) and steps in them (m/s): chosen; the rises are those of the figure that is promised. */
    private static final List<Double> WINDS = List.of(Units.fromKnots(12), Units.fromKnots(16), Units.fromKnots(20));

    private static final List<Double> RISES = List.of(Units.fromKnots(3), Units.fromKnots(6));
    private static final double LULL = Units.fromKnots(-3);

    /** Most that a perfectly trimmed boat may read under in a rising step (-): chosen, under the two per cent promised. */
    private static final double MOST_UNDER = 0.012;

    /** Seconds of a mean: as Live's. */
    private static final int MEAN = 10;

    /** Off its target by more she does not hold it (-): chosen. */
    private static final double HOLDS = 0.05;

    /** Times that are tried (s): chosen; beyond the longest it would be no response to a gust. */
    private static final double SHORTEST = 2;

    private static final double LONGEST = 40;
    private static final double FINENESS = 0.25;

    private ResponseFit() {}

    /** The response of a boat with that wing and card; null where she holds her targets in no wind that was tried. */
    public static @Nullable SpeedResponse of(
            Boat boat, WingSpec wing, SailingAims aims, AirState air, WaterState water) {
        GustSail sail = new GustSail(boat, wing, aims, air, water);
        List<SpeedResponse.Row> upwind = rows(sail, Way.UPWIND);
        List<SpeedResponse.Row> downwind = rows(sail, Way.DOWNWIND);
        return upwind.isEmpty() || downwind.isEmpty() ? null : new SpeedResponse(upwind, downwind);
    }

    private static List<SpeedResponse.Row> rows(GustSail sail, Way way) {
        List<SpeedResponse.Row> rows = new ArrayList<>();
        for (double wind : WINDS) {
            List<GustTrace> rises = RISES.stream()
                    .map(rise -> sail.sail(way, wind, rise))
                    .filter(ResponseFit::holds)
                    .toList();
            GustTrace lull = sail.sail(way, wind, LULL);
            if (!rises.isEmpty()) {
                rows.add(row(wind, rises, holds(lull) ? lull : null));
            }
        }
        return rows;
    }

    private static boolean holds(GustTrace trace) {
        return Math.abs(trace.shareBefore() - 1) < HOLDS && Math.abs(trace.shareAfter() - 1) < HOLDS;
    }

    private static SpeedResponse.Row row(double wind, List<GustTrace> rises, @Nullable GustTrace lull) {
        double rise = SHORTEST;
        for (GustTrace trace : rises) {
            rise = Math.max(rise, leastSquares(trace));
        }
        while (rise < LONGEST && under(rises, rise) > MOST_UNDER) {
            rise += FINENESS;
        }
        // Where she falls off her foils in the lull, she is taken to lose speed as she gathers it.
        double fall = lull == null ? rise : leastSquares(lull);
        double spread = under(rises, rise);
        for (GustTrace trace : rises) {
            spread = Math.max(spread, trace.shares(rise, MEAN)[1] - 1);
        }
        if (lull != null) {
            double[] shares = lull.shares(fall, MEAN);
            spread = Math.max(spread, Math.max(1 - shares[0], shares[1] - 1));
        }
        return new SpeedResponse.Row(wind, rise, fall, spread);
    }

    private static double under(List<GustTrace> rises, double time) {
        double most = 0;
        for (GustTrace trace : rises) {
            most = Math.max(most, 1 - trace.shares(time, MEAN)[0]);
        }
        return most;
    }

    private static double leastSquares(GustTrace trace) {
        double best = SHORTEST;
        for (double time = SHORTEST; time <= LONGEST; time += FINENESS) {
            if (trace.misfit(time) < trace.misfit(best)) {
                best = time;
            }
        }
        return best;
    }
}
