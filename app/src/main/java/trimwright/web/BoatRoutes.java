package trimwright.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import trimwright.boat.TrimRange;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.target.TrimSetting;
import trimwright.text.JsonOut;
import trimwright.units.Units;

/** Boats, their wings, and a wing's outline at a trim. */
final class BoatRoutes implements Routes {
    private static final List<String> PLACES = List.of("foot", "middle", "head");

    private final BoatShelf shelf;

    BoatRoutes(BoatShelf shelf) {
        this.shelf = shelf;
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
            boat.put("title", file == null ? entry.id() : file.boat().title());
            if (entry.path() != null) {
                boat.put("file", entry.path());
            }
            ArrayNode faults = boat.putArray("faults");
            entry.faults().forEach(faults::add);
            ArrayNode wings = boat.putArray("wings");
            if (file != null) {
                boat.put("hash", file.hash());
                file.boat().wings().forEach(wing -> addWing(wings.addObject(), wing));
            }
        }
        Json.send(ctx, document);
    }

    private static void addWing(ObjectNode node, WingSpec wing) {
        TrimRange trim = wing.trim();
        node.put("id", wing.id());
        node.put("span_m", wing.span());
        node.put("camber_max_deg", Units.toDegrees(trim.camberMax()));
        node.put("twist_max_deg", Units.toDegrees(trim.twistMax()));
        node.put("sheet_max_deg", Units.toDegrees(trim.sheetMax()));
        node.put("sheet_load_max_n", wing.sheet().loadMax());
    }

    private void sendShape(Context ctx) {
        WingSpec wing = BoatShelf.getWing(shelf.get(ctx.pathParam("boat")), ctx.pathParam("wing"));
        TrimSetting trim = new TrimSetting(
                angle(ctx, "camber_deg"),
                angle(ctx, "twist_deg"),
                Query.number(ctx, "twist_mid_ratio", -1, 2),
                angle(ctx, "sheet_deg"));
        WingShape shape = new WingShape(wing);
        ObjectNode document = JsonOut.document("wing-shape/1");
        ArrayNode stations = document.putArray("stations");
        List<WingShape.Section> sections = shape.sections(trim);
        for (int i = 0; i < sections.size(); i++) {
            WingShape.Section section = sections.get(i);
            ObjectNode station = stations.addObject();
            station.put("place", PLACES.get(i));
            station.put("height_m", section.height());
            station.put("chord_m", section.chord());
            station.put("flap_deg", Units.toDegrees(section.flapAngle()));
            addOutline(station.putArray("main_m"), section.main());
            addOutline(station.putArray("flap_m"), section.flap());
        }
        ObjectNode planform = document.putObject("planform");
        addOutline(planform.putArray("main_m"), shape.mainFromAbeam());
        addOutline(planform.putArray("flap_m"), shape.flapFromAbeam());
        Json.send(ctx, document);
    }

    private static double angle(Context ctx, String name) {
        return Units.fromDegrees(Query.number(ctx, name, -180, 180));
    }

    private static void addOutline(ArrayNode to, List<WingShape.Spot> spots) {
        for (WingShape.Spot spot : spots) {
            to.addArray().add(spot.forward()).add(spot.across());
        }
    }
}
