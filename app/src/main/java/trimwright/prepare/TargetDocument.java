package trimwright.prepare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import trimwright.boatfile.BoatFile;
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

    /** The document of a book computed for a boat file. */
    public static ObjectNode of(BoatFile boat, TargetBook book) {
        ObjectNode document = JsonOut.document("target-book/1", boat.hash())
                .put("boat", book.boat())
                .put("wing", book.wing())
                .put("equations", book.modelVersion());
        ArrayNode points = document.putArray("points");
        for (TargetPoint point : book.listBest()) {
            write(point, points.addObject());
        }
        return document;
    }

    private static void write(TargetPoint point, ObjectNode node) {
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
