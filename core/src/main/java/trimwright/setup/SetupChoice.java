package trimwright.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Which of several setups to take.
 *
 * @param setups all that were asked about, with what each lets expect
 * @param chanceMax largest chance in a race that a gust passes a limit, above which a setup is not recommended (-)
 */
public record SetupChoice(List<Setup> setups, double chanceMax) {
    /** Where a boat file does not say: one race in ten; chosen. */
    public static final double CHANCE_MAX = 0.1;

    /** A setup is recommended only if so much of the forecast's winds has an answer (-); chosen. */
    public static final double COVERED = 0.95;

    /** Setups are compared only if so much of the forecast's winds has an answer for all of them (-); chosen. */
    public static final double COMMON = 0.5;

    /** How much less or more wind than forecast the regret is told for (m/s): 3 knots. */
    public static final double OTHER_WIND = 3 * 1852.0 / 3600.0;

    public SetupChoice {
        setups = List.copyOf(setups);
    }

    /**
     * One setup.
     *
     * @param wing id of the wing
     * @param foils id of the foil set
     * @param crewMass all together (kg)
     * @param asForecast the race as the forecast has it
     * @param lessWind the race where the forecast's mean is too high by {@link #OTHER_WIND}
     * @param moreWind the race where it is too low by as much
     */
    public record Setup(
            String wing,
            String foils,
            double crewMass,
            RaceOutlook asForecast,
            RaceOutlook lessWind,
            RaceOutlook moreWind) {}

    /** Why a setup is not recommended whatever its time. */
    public enum Doubt {
        /** Too much of the forecast's wind is outside the target book, or is not sailed. */
        NOT_COVERED,
        /** It is not known how likely a gust passes a limit. */
        CHANCE_NOT_KNOWN,
        /** A gust passes a limit more often than the boat file allows. */
        GUST_PASSES_LIMIT
    }

    /** Why not that setup, or null where nothing speaks against it. */
    public @Nullable Doubt doubt(Setup setup) {
        RaceOutlook outlook = setup.asForecast();
        if (!(outlook.answeredShare() >= COVERED)) {
            return Doubt.NOT_COVERED;
        }
        Map<GustLimit, Double> chances = outlook.overLimit();
        if (chances.values().stream().anyMatch(chance -> Double.isNaN(chance))) {
            return Doubt.CHANCE_NOT_KNOWN;
        }
        return chances.values().stream().anyMatch(chance -> chance > chanceMax) ? Doubt.GUST_PASSES_LIMIT : null;
    }

    /** The setup of least expected time among those that nothing speaks against; null where there is none. */
    public @Nullable Setup recommended() {
        Setup best = null;
        for (Setup setup : setups) {
            boolean isFaster = best == null || regret(setup, Setup::asForecast) < regret(best, Setup::asForecast);
            if (doubt(setup) == null && isFaster) {
                best = setup;
            }
        }
        return best;
    }

    /**
     * Expected time above that of the fastest setup in the same winds (s), whether or not that one is recommended. Only winds with
     * an answer for all setups that have any count, so that no setup gains by lacking its slow winds; NaN where these are less than
     * {@link #COMMON} of the forecast.
     *
     * @param outlook which of the three winds
     */
    public double regret(Setup setup, Function<Setup, RaceOutlook> outlook) {
        double least = Double.POSITIVE_INFINITY;
        for (Setup other : setups) {
            double time = commonTime(other, outlook);
            if (!Double.isNaN(time)) {
                least = Math.min(least, time);
            }
        }
        return commonTime(setup, outlook) - least;
    }

    private double commonTime(Setup setup, Function<Setup, RaceOutlook> outlook) {
        List<WindOutlook> own = outlook.apply(setup).winds();
        List<WindOutlook> common = new ArrayList<>();
        for (int i = 0; i < own.size(); i++) {
            if (isCommon(i, outlook)) {
                common.add(own.get(i));
            }
        }
        double share = common.stream().mapToDouble(WindOutlook::weight).sum();
        return share >= COMMON ? RaceOutlook.mean(common, WindOutlook::time) : Double.NaN;
    }

    private boolean isCommon(int wind, Function<Setup, RaceOutlook> outlook) {
        for (Setup setup : setups) {
            RaceOutlook one = outlook.apply(setup);
            if (one.answeredShare() > 0 && !one.winds().get(wind).isAnswered()) {
                return false;
            }
        }
        return true;
    }

    /** Share of the forecast's winds, among those with an answer for all setups, in which this one is the fastest (-). */
    public double fastestShare(Setup setup) {
        double all = 0;
        double won = 0;
        for (int i = 0; i < setup.asForecast().winds().size(); i++) {
            List<WindOutlook> here = new ArrayList<>();
            for (Setup other : setups) {
                here.add(other.asForecast().winds().get(i));
            }
            if (here.stream().allMatch(WindOutlook::isAnswered)) {
                WindOutlook own = setup.asForecast().winds().get(i);
                all += own.weight();
                won += here.stream().allMatch(other -> own.time() <= other.time()) ? own.weight() : 0;
            }
        }
        return won / all;
    }
}
