package trimwright.choice;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Function;
import trimwright.setup.Forecast;
import trimwright.setup.GustLimit;
import trimwright.setup.GustProcess;
import trimwright.setup.RaceLeg;
import trimwright.setup.RaceOutlook;
import trimwright.setup.SetupChoice;
import trimwright.setup.WindOutlook;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.units.Angles;
import trimwright.units.Units;

/** {@code setup-choice/1}: what is said of each setup. */
public final class SetupDocument {
    private SetupDocument() {}

    /** The document of a request's choice. */
    public static ObjectNode of(SetupRequest request, SetupChoice choice) {
        ObjectNode document = JsonOut.document("setup-choice/1", request.file().hash())
                .put("boat", request.file().boat().name());
        writeForecast(request.forecast(), document.putObject("forecast"));
        ArrayNode legs = document.putArray("legs");
        for (RaceLeg leg : request.legs()) {
            legs.addObject()
                    .put("bearing_deg", Units.toDegrees(Angles.compass(leg.bearing())))
                    .put("length_m", leg.length());
        }
        document.putObject("turns")
                .put("per_leg", request.turns().perLeg())
                .put("tack_on_foils_m", request.turns().tackOnFoils())
                .put("tack_on_hulls_m", request.turns().tackOnHulls())
                .put("gybe_on_foils_m", request.turns().gybeOnFoils())
                .put("gybe_on_hulls_m", request.turns().gybeOnHulls());
        document.put("gust_chance_max_ratio", choice.chanceMax());
        ArrayNode setups = document.putArray("setups");
        for (SetupChoice.Setup setup : choice.setups()) {
            write(request, choice, setup, setups.addObject());
        }
        return document.put("interval", Texts.of("choose.interval")).put("caution", Texts.of("choose.caution"));
    }

    private static void writeForecast(Forecast forecast, ObjectNode node) {
        node.put("wind_kn", Units.toKnots(forecast.meanWind()))
                .put("wind_spread_kn", Units.toKnots(forecast.spread()))
                .put("from_deg", Units.toDegrees(forecast.from()))
                .put("shift_deg", Units.toDegrees(forecast.swing()))
                .put("turbulence_ratio", forecast.turbulence())
                .put("gust_factor_ratio", GustProcess.gustFactor(forecast.turbulence(), forecast.meanWind()))
                .put("current_kn", Units.toKnots(forecast.current()))
                .put("current_to_deg", Units.toDegrees(forecast.currentTo()));
    }

    private static void write(SetupRequest request, SetupChoice choice, SetupChoice.Setup setup, ObjectNode node) {
        node.put("wing", setup.wing())
                .put("foils", setup.foils())
                .put("crew_mass_kg", setup.crewMass())
                .put("recommended", setup.equals(choice.recommended()))
                .put("reason", SetupWords.reason(choice, setup))
                .put("verdict", SetupWords.verdict(request, choice, setup))
                .put("fastest_ratio", choice.fastestShare(setup));
        ArrayNode outlooks = node.putArray("outlooks");
        double other = Units.toKnots(SetupChoice.OTHER_WIND);
        write(choice, setup, -other, SetupChoice.Setup::lessWind, outlooks.addObject());
        write(choice, setup, 0, SetupChoice.Setup::asForecast, outlooks.addObject());
        write(choice, setup, other, SetupChoice.Setup::moreWind, outlooks.addObject());
        ArrayNode winds = node.putArray("winds");
        for (WindOutlook wind : setup.asForecast().winds()) {
            winds.addObject()
                    .put("tws_kn", Units.toKnots(wind.wind()))
                    .put("weight_ratio", wind.weight())
                    .put("time_s", wind.time())
                    .put("foiling_ratio", wind.foilingShare());
        }
    }

    private static void write(
            SetupChoice choice,
            SetupChoice.Setup setup,
            double changeKn,
            Function<SetupChoice.Setup, RaceOutlook> which,
            ObjectNode node) {
        RaceOutlook outlook = which.apply(setup);
        node.put("change_kn", changeKn)
                .put("time_s", outlook.time())
                .put("time_low_s", outlook.timeBelow(RaceOutlook.LOW))
                .put("time_high_s", outlook.timeBelow(RaceOutlook.HIGH))
                .put("regret_s", choice.regret(setup, which))
                .put("foiling_ratio", outlook.foilingShare())
                .put("answered_ratio", outlook.answeredShare());
        for (GustLimit limit : GustLimit.values()) {
            node.put(limit.key() + "_passed_ratio", outlook.overLimit().getOrDefault(limit, Double.NaN));
        }
    }
}
