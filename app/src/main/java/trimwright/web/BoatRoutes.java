package trimwright.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import trimwright.boat.Boat;
import trimwright.boat.FoilSpec;
import trimwright.boat.TrimRange;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.WingCut;
import trimwright.season.KeptLearned;
import trimwright.target.TrimSetting;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.units.Units;

/** Boats, their wings, and a wing's outline at a trim. */
final class BoatRoutes implements Routes {
    private final BoatShelf shelf;
    private final KeptLearned learned;

    /** @param learned of the library that is shown */
    BoatRoutes(BoatShelf shelf, KeptLearned learned) {
        this.shelf = shelf;
        this.learned = learned;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/boats", this::sendBoats);
        routes.get("/api/boats/{boat}/wings/{wing}/shape", this::sendShape);
    }

    private void sendBoats(Context ctx) {
        ObjectNode document = JsonOut.document("boats/1");
        ArrayNode boats = document.putArray("boats");
        for (BoatShelf.Entry entry : shelf.list()) {
            ObjectNode boat = boats.addObject().put("id", entry.id());
            BoatFile file = entry.file();
            boat.put("title", file == null ? entry.id() : title(file.boat()));
            if (entry.path() != null) {
                boat.put("file", entry.path());
            }
            ArrayNode faults = boat.putArray("faults");
            entry.faults().forEach(faults::add);
            ArrayNode wings = boat.putArray("wings");
            if (file != null) {
                boat.put("hash", file.hash());
                file.boat()
                        .wings()
                        .forEach(wing -> addWing(wings.addObject(), wing).put("learned", learned.has(file, wing)));
            }
        }
        Json.send(ctx, document);
    }

    private static String title(Boat boat) {
        String foils = boat.foils().id();
        return foils.equals(FoilSpec.STANDARD) ? boat.title() : Texts.of("web.boat_with_foils", boat.title(), foils);
    }

    private static ObjectNode addWing(ObjectNode node, WingSpec wing) {
        TrimRange trim = wing.trim();
        node.put("id", wing.id());
        node.put("span_m", wing.span());
        node.put("camber_max_deg", Units.toDegrees(trim.camberMax()));
        node.put("twist_max_deg", Units.toDegrees(trim.twistMax()));
        node.put("sheet_max_deg", Units.toDegrees(trim.sheetMax()));
        return node.put("sheet_load_max_n", wing.sheet().loadMax());
    }

    private void sendShape(Context ctx) {
        WingSpec wing = BoatShelf.getWing(shelf.get(ctx.pathParam("boat")), ctx.pathParam("wing"));
        TrimSetting trim = new TrimSetting(
                angle(ctx, "camber_deg"),
                angle(ctx, "twist_deg"),
                Query.number(ctx, "twist_mid_ratio", -1, 2),
                angle(ctx, "sheet_deg"));
        ObjectNode document = JsonOut.document("wing-shape/1");
        WingShapeJson.put(document, wing, trim.sheet(), WingCut.ofThree(wing, trim));
        Json.send(ctx, document);
    }

    private static double angle(Context ctx, String name) {
        return Units.fromDegrees(Query.number(ctx, name, -180, 180));
    }
}
