package trimwright.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.stat.descriptive.rank.Percentile;
import trimwright.segment.Phase;
import trimwright.segment.PointOfSail;
import trimwright.units.Units;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * The boat's own best: for each knot of wind in which it sailed steadily for 60 s or more, the 90th percentile of its
 * VMG in phases. It says nothing on reaches, where speed depends on the angle. One sample in ten is faster than it by
 * its making, so falling short of it is no fault by itself.
 */
public final class OwnBestReference implements Reference {
    private static final double LEAST_TIME = 60.0;
    private static final double PERCENTILE = 90.0;

    private final Map<PointOfSail, Map<Long, Double>> rates;

    private OwnBestReference(Map<PointOfSail, Map<Long, Double>> rates) {
        this.rates = rates;
    }

    public static OwnBestReference of(WindTrack track, List<Phase> phases) {
        Map<PointOfSail, Map<Long, List<Double>>> samples = new EnumMap<>(PointOfSail.class);
        for (Phase phase : phases) {
            if (!phase.kind().isJudgedByVmg()) {
                continue;
            }
            Map<Long, List<Double>> byWind = samples.computeIfAbsent(phase.kind(), on -> new TreeMap<>());
            for (int i = phase.span().from(); i < phase.span().to(); i++) {
                double made = track.get(Quantity.VMG, i) * phase.kind().windwardSign();
                if (!Double.isNaN(made)) {
                    byWind.computeIfAbsent(bin(track.get(Quantity.TWS, i)), wind -> new ArrayList<>())
                            .add(made);
                }
            }
        }
        Map<PointOfSail, Map<Long, Double>> rates = new EnumMap<>(PointOfSail.class);
        samples.forEach((on, byWind) -> {
            Map<Long, Double> ofPoint = new TreeMap<>();
            byWind.forEach((wind, made) -> {
                if (made.size() * track.clock().step() >= LEAST_TIME) {
                    ofPoint.put(wind, percentile(made));
                }
            });
            rates.put(on, ofPoint);
        });
        return new OwnBestReference(rates);
    }

    private static double percentile(List<Double> made) {
        return new Percentile(PERCENTILE)
                .evaluate(made.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** The whole knot nearest to a wind (m/s). */
    private static long bin(double tws) {
        return Math.round(tws / Units.KNOT);
    }

    @Override
    public String key() {
        return "own_best";
    }

    @Override
    public Rate rate(PointOfSail on, double tws, double twaToMark) {
        Double best =
                Double.isNaN(tws) ? null : rates.getOrDefault(on, Map.of()).get(bin(tws));
        return best == null ? Rate.NONE : new Rate(best, false);
    }

    @Override
    public double rateAtAngle(PointOfSail on, double tws, double courseTwa, double offMark) {
        return Double.NaN;
    }
}
