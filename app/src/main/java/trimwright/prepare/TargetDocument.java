package trimwright.prepare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import trimwright.aim.Aim;
import trimwright.boatfile.BoatFile;
import trimwright.platform.FoilSet;
import trimwright.platform.Variable;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetLimit;
import trimwright.target.TargetPoint;
import trimwright.text.JsonOut;
import trimwright.units.Units;

/** {@code target-book/1}: the better branch at each node, flat. */
public final class TargetDocument {
    private TargetDocument() {}

    /** The document of a book computed for a boat file, all controls free, sections in closed form. */
    public static ObjectNode of(BoatFile boat, TargetBook book) {
        return withPoints(head(boat, book, SectionSource.CLOSED_FORM), boat, book, null);
    }

    /** The document of the book of a request, with aims: what is held stands in {@code fixed}, which is absent where all is free. */
    public static ObjectNode of(TargetRequest request, TargetBook book, BookAims aims) {
        ObjectNode document = head(request.boat(), book, request.section());
        if (!request.held().isEmpty() || request.foils() == FoilSet.BOTH_DOWN) {
            writeFixed(request, document.putObject("fixed"));
        }
        document.put("turbulence_ratio", aims.day().turbulence())
                .put("gust_chance_per_minute_ratio", aims.day().chancePerMinute())
                .put("aim_reason", aims.reason());
        return withPoints(document, request.boat(), book, aims);
    }

    private static ObjectNode head(BoatFile boat, TargetBook book, SectionSource section) {
        ObjectNode document = JsonOut.document("target-book/1", boat.hash())
                .put("boat", book.boat())
                .put("wing", book.wing())
                .put("foils", boat.boat().foils().id())
                .put("crew_mass_kg", boat.boat().crew().mass())
                .put("equations", book.modelVersion())
                .put("section", section.key());
        MarkedKeys.writeUnits(boat.marks(), book.wing(), document);
        return document;
    }

    private static void writeFixed(TargetRequest request, ObjectNode fixed) {
        for (Map.Entry<Variable, Double> held : new TreeMap<>(request.held()).entrySet()) {
            double value = held.getValue();
            switch (held.getKey()) {
                case CAMBER -> fixed.put("camber_deg", Units.toDegrees(value));
                case TWIST -> fixed.put("twist_deg", Units.toDegrees(value));
                case TWIST_MID_RATIO -> fixed.put("twist_mid_ratio", value);
                case SHEET -> fixed.put("sheet_deg", Units.toDegrees(value));
                case HEEL -> fixed.put("heel_deg", Units.toDegrees(value));
                case RIDE_HEIGHT -> fixed.put("ride_height_m", value);
                case PITCH -> fixed.put("pitch_deg", Units.toDegrees(value));
                case CREW_PLACE -> fixed.put("crew_place_m", value);
                default -> throw new IllegalArgumentException("no control of a crew: " + held.getKey());
            }
        }
        if (request.foils() == FoilSet.BOTH_DOWN) {
            fixed.put("board", "down");
        }
    }

    private static ObjectNode withPoints(ObjectNode document, BoatFile boat, TargetBook book, @Nullable BookAims aims) {
        ArrayNode points = document.putArray("points");
        for (TargetPoint point : book.listBest()) {
            ObjectNode node = points.addObject();
            Aim aim = aims == null ? null : aims.find(point);
            write(point, aim, node);
            if (point.isSolved()) {
                MarkedKeys.write(boat.marks(), book.wing(), point.getTarget(), node);
            }
            if (aim != null) {
                MarkedKeys.writeAim(boat.marks(), book.wing(), aim.state(), node);
            }
        }
        return document;
    }

    private static void write(TargetPoint point, @Nullable Aim aim, ObjectNode node) {
        node.put("mode", point.mode().key())
                .put("tws_kn", Units.toKnots(point.trueWindSpeed()))
                .put("twa_deg", Units.toDegrees(point.trueWindAngle()))
                .put("solved", point.isSolved());
        if (!point.isSolved()) {
            node.put("reason", point.reason());
            return;
        }
        Target target = point.getTarget();
        node.put("foiling", point.isFoiling()).put("twa_bow_deg", Units.toDegrees(point.trueWindAngleToBow()));
        for (TargetColumn column : TargetColumn.ALL) {
            node.put(column.key(), column.value().applyAsDouble(point));
        }
        if (aim != null) {
            for (AimColumn column : AimColumn.ALL) {
                node.put(column.key(), column.value().applyAsDouble(aim));
            }
        }
        ArrayNode limits = node.putArray("limits");
        for (TargetLimit limit : target.limits()) {
            limits.add(limit.key());
        }
        ArrayNode caveats = node.putArray("caveats");
        for (TargetCaveat caveat : target.caveats()) {
            caveats.add(caveat.name().toLowerCase(Locale.ROOT));
        }
    }
}
