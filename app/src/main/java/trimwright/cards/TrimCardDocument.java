package trimwright.cards;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import trimwright.platform.Platform;
import trimwright.prepare.SectionSource;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.Version;

/** {@code card-page/1}: the texts that the printed trim card has, for a screen. */
public final class TrimCardDocument {
    private TrimCardDocument() {}

    /** The document of a request's sides. */
    public static ObjectNode of(TrimCardRequest request, List<TrimCard.Side> sides) {
        ObjectNode document = JsonOut.document("card-page/1", request.file().hash())
                .put("boat", request.file().boat().name())
                .put("wing", request.wing().id())
                .put("foils", request.file().boat().foils().id())
                .put("crew_mass_kg", request.file().boat().crew().mass())
                .put("date", request.date().toString())
                .put("section", request.section().key())
                .put("turbulence_ratio", request.turbulence());
        ArrayNode list = document.putArray("sides");
        for (TrimCard.Side side : sides) {
            write(request, side, list.addObject());
        }
        return document.put("caution", Texts.of("card.caution")).put("origin", origin(request));
    }

    /** Which boat file and which model: the last line of every card. */
    static String origin(TrimCardRequest request) {
        String origin = Texts.of(
                "card.origin",
                request.file().boat().name(),
                request.file().hash(),
                request.file().boat().foils().id(),
                request.file().boat().crew().mass(),
                Version.get(),
                Platform.MODEL_VERSION);
        return request.section() == SectionSource.COMPUTED ? origin + " " + Texts.of("sections.computed") : origin;
    }

    /** What a side is, its headline. */
    static String title(TrimCardRequest request, TrimCard.Side side) {
        return Texts.of(
                "card.title", request.file().boat().title(), request.wing().id(), side.name());
    }

    private static void write(TrimCardRequest request, TrimCard.Side side, ObjectNode node) {
        node.put("side", side.key())
                .put("name", side.name())
                .put("title", title(request, side))
                .put("remark", side.remark());
        ArrayNode head = node.putArray("head");
        side.head().forEach(head::add);
        ArrayNode rows = node.putArray("rows");
        for (TrimCard.Row row : side.rows()) {
            ObjectNode one = rows.addObject().put("wind", row.wind()).put("how", row.how());
            if (row.reason() != null) {
                one.put("reason", row.reason());
            }
            ArrayNode cells = one.putArray("cells");
            for (TrimCard.Cell cell : row.cells()) {
                cells.addObject().put("main", cell.main()).put("below", cell.below());
            }
        }
        ArrayNode notes = node.putArray("notes");
        side.notes().forEach(notes::add);
    }
}
