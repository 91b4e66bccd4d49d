package trimwright.cards;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import trimwright.boat.SheetTackle;
import trimwright.card.CamberLoad;
import trimwright.card.LoadRow;
import trimwright.card.SheetLoad;
import trimwright.power.HaulSpeed;
import trimwright.power.PowerAccount;
import trimwright.target.Target;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetPoint;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.units.Units;

/** {@code loads/1}: what the load card says. */
public final class LoadDocument {
    private LoadDocument() {}

    /** The document of a request's loads. */
    public static ObjectNode of(LoadRequest request, List<LoadRun.WindLoads> winds) {
        ObjectNode document = JsonOut.document("loads/1", request.file().hash())
                .put("boat", request.file().boat().name())
                .put("wing", request.wing().id())
                .put("foils", request.file().boat().foils().id())
                .put("crew_mass_kg", request.file().boat().crew().mass())
                .put("angle_deg", Units.toDegrees(SheetLoad.ANGLE))
                .put("lap_s", request.lap())
                .put("sheet_load_max_n", request.wing().sheet().loadMax());
        ArrayNode rows = document.putArray("rows");
        ArrayNode accounts = document.putArray("accounts");
        for (LoadRun.WindLoads wind : winds) {
            wind.rows().forEach(row -> write(row, request.wing().sheet(), rows.addObject()));
            wind.accounts().forEach(account -> write(request, wind, account, accounts.addObject()));
        }
        document.put("source", source(request));
        document.put("caution", Texts.of("loads.caution"));
        return document;
    }

    /** Where rates, powers and oil come from, by the boat file, in one sentence. */
    public static String source(LoadRequest request) {
        String source = request.handling().source();
        return source == null ? Texts.of("loads.no_source") : Texts.of("loads.source", source);
    }

    private static void write(LoadRow row, SheetTackle tackle, ObjectNode node) {
        TargetPoint point = row.point();
        Target target = point.getTarget();
        node.put("mode", point.mode().key())
                .put("tws_kn", Units.toKnots(point.trueWindSpeed()))
                .put("twa_deg", Units.toDegrees(point.trueWindAngle()))
                .put("foiling", point.isFoiling())
                .put("boat_speed_kn", Units.toKnots(target.boatSpeed()))
                .put("camber_deg", Units.toDegrees(target.trim().camber()))
                .put("sheet_deg", Units.toDegrees(target.trim().sheet()));
        write(row.sheet(), tackle, node);
        ArrayNode cambers = node.putArray("cambers");
        for (CamberLoad camber : row.cambers()) {
            write(camber, tackle, cambers.addObject());
        }
        CamberLoad saving = row.cheapestSaving();
        if (saving != null) {
            node.putObject("cheapest_saving")
                    .put("camber_deg", Units.toDegrees(saving.camber()))
                    .put("work_spared_ratio", row.spared(saving))
                    .put("speed_lost_kn", Units.toKnots(saving.speedLost()));
        }
        ArrayNode caveats = node.putArray("caveats");
        for (TargetCaveat caveat : target.caveats()) {
            caveats.add(caveat.name().toLowerCase(Locale.ROOT));
        }
    }

    private static void write(CamberLoad camber, SheetTackle tackle, ObjectNode node) {
        node.put("camber_deg", Units.toDegrees(camber.camber()))
                .put("boat_speed_kn", Units.toKnots(camber.speed()))
                .put("speed_lost_kn", Units.toKnots(camber.speedLost()));
        write(camber.sheet(), tackle, node);
    }

    private static void write(SheetLoad sheet, SheetTackle tackle, ObjectNode node) {
        node.put("sheet_load_n", sheet.load())
                .put("sheet_load_eased_n", sheet.loadEased())
                .put("hauling_load_n", sheet.load() / tackle.purchase())
                .put("work_at_wing_j", sheet.work())
                .put("ease_s", sheet.secondsEasing())
                .put("haul_kept_up_s", sheet.secondsKept())
                .put("haul_all_out_s", sheet.secondsAllOut());
    }

    private static void write(LoadRequest request, LoadRun.WindLoads wind, PowerAccount account, ObjectNode node) {
        node.put("tws_kn", Units.toKnots(wind.wind()))
                .put("fitness_ratio", account.fitness())
                .put("supply_w", account.supply())
                .put("oil_w", account.oil())
                .put("sheet_w", account.sheet())
                .put("left_for_sheet_w", account.leftForSheet())
                .put("haul_rate_deg_per_s", Units.toDegrees(wind.haulRate(request, account)))
                .put("short", account.isShort())
                .put("turn_work_j", account.turnWork())
                .put("turns_per_lap", account.turns())
                .put("rested_after_s", account.rested());
        ArrayNode speeds = node.putArray("haul_speeds");
        for (HaulSpeed speed :
                HaulSpeed.listOf(request.handling(), request.wing().sheet(), account)) {
            speeds.addObject()
                    .put("sheet_load_n", speed.load())
                    .put("kept_up_deg_per_s", Units.toDegrees(speed.keptUp()))
                    .put("burst_deg_per_s", Units.toDegrees(speed.burst()));
        }
        ArrayNode savings = node.putArray("savings");
        for (PowerAccount.Saving saving : account.savings()) {
            savings.addObject()
                    .put("name", saving.name())
                    .put("spared_j", saving.spared())
                    .put("turns_more_per_lap", saving.turns());
        }
        PowerAccount.Saving cheapest = account.cheapestSaving();
        node.put("cheapest_saving", cheapest == null ? null : cheapest.name());
        ArrayNode steps = node.putArray("turn_steps");
        for (PowerAccount.Step step : account.steps()) {
            steps.addObject()
                    .put("name", step.name())
                    .put("work_j", step.work())
                    .put("done_s", step.done());
        }
    }
}
