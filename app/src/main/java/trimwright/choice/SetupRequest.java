package trimwright.choice;

import java.util.ArrayList;
import java.util.List;
import trimwright.aim.Gustiness;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.TargetRequest;
import trimwright.setup.Forecast;
import trimwright.setup.GustProcess;
import trimwright.setup.RaceLeg;
import trimwright.setup.SetupChoice;
import trimwright.setup.TurnLosses;
import trimwright.target.TargetGrid;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.units.Units;

/**
 * Which setups are to be compared, and over what.
 *
 * @param file boat file
 * @param wings some of its wings
 * @param foilSets some of its foil sets, by name
 * @param crewMasses all together (kg)
 * @param forecast wind and current
 * @param legs of the course
 * @param turns and what they cost
 */
public record SetupRequest(
        BoatFile file,
        List<WingSpec> wings,
        List<String> foilSets,
        List<Double> crewMasses,
        Forecast forecast,
        List<RaceLeg> legs,
        TurnLosses turns) {
    /** Setups of one question; chosen: each takes a target book. */
    public static final int MOST = 12;

    /** Winds of a book are looked for to there (kn); chosen: few race in more. */
    private static final int MOST_WIND_KN = 34;

    private static final int LEAST_WIND_KN = 4;
    private static final int STEP_KN = 2;

    /** Deviations of the forecast that a book is to cover: 99 of 100 winds. */
    private static final double COVERED = 2.6;

    public SetupRequest {
        wings = List.copyOf(wings);
        foilSets = List.copyOf(foilSets);
        crewMasses = List.copyOf(crewMasses);
        legs = List.copyOf(legs);
        int setups = wings.size() * foilSets.size() * crewMasses.size();
        if (setups > MOST) {
            throw new UserInputException(Texts.of("choose.too_many", setups, MOST));
        }
        foilSets.forEach(file::withFoils);
        crewMasses.forEach(file::withCrewMass);
        if (legs.isEmpty()) {
            throw new IllegalArgumentException("a course without a leg");
        }
    }

    /** Each wing with each foil set and each crew, in this order. */
    public List<Sailed> setups() {
        List<Sailed> setups = new ArrayList<>();
        for (WingSpec wing : wings) {
            for (String foils : foilSets) {
                for (double mass : crewMasses) {
                    setups.add(new Sailed(file.withFoils(foils).withCrewMass(mass), wing));
                }
            }
        }
        return setups;
    }

    /**
     * One of the setups.
     *
     * @param file the boat with its foil set and crew
     * @param wing its wing
     */
    public record Sailed(BoatFile file, WingSpec wing) {}

    /** The default grid, and as many winds more as the forecast asks for. */
    public TargetGrid grid() {
        double reach = reach(COVERED);
        double low = Units.toKnots(forecast.meanWind() - reach);
        double high = Units.toKnots(forecast.meanWind() + reach);
        TargetGrid usual = TargetRequest.defaultGrid();
        int from = low < 6 ? LEAST_WIND_KN : 6;
        int to = 26;
        while (to < high && to < MOST_WIND_KN) {
            to += STEP_KN;
        }
        List<Double> winds = new ArrayList<>();
        for (int knots = from; knots <= to; knots += STEP_KN) {
            winds.add(Units.fromKnots(knots));
        }
        return new TargetGrid(winds, usual.angles());
    }

    /** Winds of the grid in which gusts have to be looked at (m/s), in any of the three outlooks. */
    public List<Double> gustWinds() {
        double reach = 3 * forecast.spread() + SetupChoice.OTHER_WIND + Units.fromKnots(STEP_KN);
        return grid().winds().stream()
                .filter(wind -> Math.abs(wind - forecast.meanWind()) <= reach)
                .toList();
    }

    /** So many deviations of the forecast and of the wander about it (m/s). */
    private double reach(double deviations) {
        double wander = GustProcess.followedSigma(forecast.turbulence(), forecast.meanWind());
        return deviations * (forecast.spread() + wander);
    }

    /** How gusty it is, and how seldom a gust may pass a limit. */
    public Gustiness day() {
        return Gustiness.of(forecast.turbulence(), file.boat().limits());
    }

    /** Largest chance that a gust passes a limit: the boat file's, or the program's. */
    public double chanceMax() {
        Double own = file.boat().limits().gustChanceMax();
        return own == null ? SetupChoice.CHANCE_MAX : own;
    }
}
