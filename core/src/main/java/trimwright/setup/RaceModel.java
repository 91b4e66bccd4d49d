package trimwright.setup;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.target.Branch;
import trimwright.target.TargetBook;

/**
 * One setup sailed round a course in the winds of a forecast. The wind's direction is drawn anew for each leg and held on it; its
 * strength wanders about the race's mean and speed follows it; on the foils or not goes by {@link StayingUp}. Leaves out other
 * boats, waves, the start, wind that differs over the course, and what a crew loses against its targets: all setups are sailed
 * equally well.
 */
public final class RaceModel {
    /** Winds of the forecast: so many deviations either way, in such steps; chosen, beyond lie 3 races in 1000. */
    private static final NormalNodes MEANS = NormalNodes.even(3, 0.25);

    /** Wander of the wind about the race's mean; chosen alike. */
    private static final NormalNodes WANDER = NormalNodes.even(3, 0.5);

    /** Directions of a leg's wind: exact for polynomials to the ninth power. */
    private static final NormalNodes SWINGS = NormalNodes.gaussHermite(5);

    /** Part of the wander that must have an answer, else there is none for that wind (-); chosen. */
    private static final double ENOUGH = 0.9;

    private final TargetBook book;
    private final Map<RaceLeg, AimedLeg> aims;
    private final TurnLosses turns;
    private final double takesOff;

    /**
     * @param aims how each leg is sailed below its limits; legs without any are sailed at the targets and have no chance known
     */
    public RaceModel(TargetBook book, Map<RaceLeg, AimedLeg> aims, TurnLosses turns) {
        this.book = book;
        this.aims = Map.copyOf(aims);
        this.turns = turns;
        this.takesOff = TakeOffWind.lowest(book);
    }

    /** The race that a forecast lets expect. */
    public RaceOutlook outlook(Forecast forecast, List<RaceLeg> legs) {
        Map<RaceLeg, Integer> counts = new LinkedHashMap<>();
        Map<RaceLeg, List<LegSpeeds>> speeds = new LinkedHashMap<>();
        for (RaceLeg leg : legs) {
            counts.merge(leg, 1, Integer::sum);
            speeds.computeIfAbsent(leg, one -> speeds(one, forecast));
        }
        List<WindOutlook> winds = new ArrayList<>();
        for (int i = 0; i < MEANS.count(); i++) {
            double wind = forecast.meanWind() + MEANS.z().get(i) * forecast.spread();
            winds.add(race(forecast, wind, MEANS.weight().get(i), counts, speeds));
        }
        return new RaceOutlook(winds);
    }

    private List<LegSpeeds> speeds(RaceLeg leg, Forecast forecast) {
        List<LegSpeeds> speeds = new ArrayList<>();
        for (double z : SWINGS.z()) {
            speeds.add(new LegSpeeds(book, leg.bearing(), forecast.from() + z * forecast.swing(), forecast));
        }
        return speeds;
    }

    private WindOutlook race(
            Forecast forecast,
            double wind,
            double weight,
            Map<RaceLeg, Integer> counts,
            Map<RaceLeg, List<LegSpeeds>> speeds) {
        if (!(wind > 0)) {
            return new WindOutlook(wind, weight, Double.NaN, Double.NaN, Map.of());
        }
        double wander = GustProcess.followedSigma(forecast.turbulence(), wind);
        double time = 0;
        double up = 0;
        Map<GustLimit, Double> passings = new EnumMap<>(GustLimit.class);
        for (Map.Entry<RaceLeg, Integer> entry : counts.entrySet()) {
            RaceLeg leg = entry.getKey();
            LegTime one = legTime(forecast, wind, wander, leg, speeds.getOrDefault(leg, List.of()));
            time += entry.getValue() * one.time;
            up += entry.getValue() * one.onFoils;
            AimedLeg line = aims.get(leg);
            for (GustLimit limit : GustLimit.values()) {
                double rate = line == null ? Double.NaN : line.rate(limit, wind);
                passings.merge(limit, entry.getValue() * one.time * rate, Double::sum);
            }
        }
        // Passings are rare and independent, so their number is Poisson's.
        passings.replaceAll((limit, number) -> 1 - StrictMath.exp(-number));
        return new WindOutlook(wind, weight, time, up / time, passings);
    }

    /**
     * @param time on a leg (s)
     * @param onFoils part of it on the foils (s)
     */
    private record LegTime(double time, double onFoils) {}

    private LegTime legTime(Forecast forecast, double wind, double wander, RaceLeg leg, List<LegSpeeds> speeds) {
        double time = 0;
        double onFoils = 0;
        AimedLeg aimed = aims.get(leg);
        double share = aimed == null ? 1 : aimed.speedShare(wind);
        for (int i = 0; i < SWINGS.count(); i++) {
            Mean mean = mean(speeds.get(i), wind, wander);
            double loss = turnLoss(forecast, wind, leg, mean.share);
            double one = (leg.length() + loss) / (mean.speed * share);
            time += SWINGS.weight().get(i) * one;
            onFoils += SWINGS.weight().get(i) * one * mean.share;
        }
        return new LegTime(time, onFoils);
    }

    /**
     * @param speed over the wander of the wind (m/s)
     * @param share of the time on the foils (-)
     */
    private record Mean(double speed, double share) {}

    private Mean mean(LegSpeeds speeds, double wind, double sigma) {
        double low = (speeds.comesDown() - wind) / sigma;
        double high = (Math.max(takesOff, speeds.comesDown()) - wind) / sigma;
        double answered = 0;
        double way = 0;
        double up = 0;
        for (int i = 0; i < WANDER.count(); i++) {
            double z = WANDER.z().get(i);
            double here = wind + z * sigma;
            double share = StayingUp.share(z, low, high);
            double speed = (share > 0 ? share * speeds.onFoils(here) : 0)
                    + (share < 1 ? (1 - share) * speeds.onHulls(here) : 0);
            if (!Double.isNaN(speed)) {
                double weight = WANDER.weight().get(i);
                answered += weight;
                way += weight * speed;
                up += weight * share;
            }
        }
        return answered < ENOUGH ? new Mean(Double.NaN, Double.NaN) : new Mean(way / answered, up / answered);
    }

    /** Way lost in the turns of a leg (m): none where the leg is sailed straight. */
    private double turnLoss(Forecast forecast, double wind, RaceLeg leg, double share) {
        WayMade.@Nullable Way way = new WayMade(book, share > 0.5 ? Branch.FOILING : Branch.DISPLACEMENT)
                .way(leg.bearing(), wind, forecast.from());
        if (way == null) {
            return 0;
        }
        return switch (way) {
            case TACKED -> turns.perLeg() * (share * turns.tackOnFoils() + (1 - share) * turns.tackOnHulls());
            case GYBED -> turns.perLeg() * (share * turns.gybeOnFoils() + (1 - share) * turns.gybeOnHulls());
            case STRAIGHT -> 0;
        };
    }
}
