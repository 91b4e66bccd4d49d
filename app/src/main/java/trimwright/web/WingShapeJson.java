package trimwright.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import trimwright.boat.WingSpec;
import trimwright.prepare.WingCut;
import trimwright.units.Units;

/** A wing's outline at a trim as pages draw it (m): sections at foot, middle and head, and the wing from abeam. */
final class WingShapeJson {
    private static final List<String> PLACES = List.of("foot", "middle", "head");

    private WingShapeJson() {}

    /**
     * Adds {@code stations} and {@code planform}.
     *
     * @param sheet angle of the wing to the centreline (rad)
     * @param cuts foot, middle and head
     */
    static void put(ObjectNode document, WingSpec wing, double sheet, List<WingCut> cuts) {
        WingShape shape = new WingShape(wing);
        ArrayNode stations = document.putArray("stations");
        for (int i = 0; i < PLACES.size(); i++) {
            WingShape.Section section = shape.section(cuts.get(i), sheet);
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
    }

    private static void addOutline(ArrayNode to, List<WingShape.Spot> spots) {
        for (WingShape.Spot spot : spots) {
            to.addArray().add(spot.forward()).add(spot.across());
        }
    }
}
