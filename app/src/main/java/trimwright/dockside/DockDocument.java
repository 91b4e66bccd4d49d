package trimwright.dockside;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import trimwright.dock.DockAnswer;
import trimwright.dock.DockFinding;
import trimwright.dock.DockGiven;
import trimwright.dock.DockLine;
import trimwright.dock.DockOffset;
import trimwright.dock.DockStep;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.units.Units;

/** {@code dock-check/1}: every line as numbers and as words, the prior, and lines for the boat file. */
public final class DockDocument {
    private DockDocument() {}

    public static ObjectNode of(DockRequest request, DockAnswer.Checked checked) {
        ObjectNode document = JsonOut.document("dock-check/1", request.file().hash())
                .put("boat", request.track().boat())
                .put("described_by", request.file().boat().name())
                .put("wing", request.wing().id())
                .put("start_utc", Instant.ofEpochSecond(0, checked.startNanos()).toString())
                .put("duration_s", checked.seconds());
        given(request.given(), document.putObject("given"));
        for (DockFinding.Verdict verdict : DockFinding.Verdict.values()) {
            document.put(DockWords.key(verdict), count(checked, verdict));
        }
        ArrayNode lines = document.putArray("lines");
        checked.lines().forEach(line -> write(line, lines.addObject()));
        ArrayNode prior = document.putArray("prior");
        checked.prior().forEach(offset -> write(offset, prior.addObject()));
        ArrayNode file = document.putArray("boat_file_lines");
        FileLines.of(checked).forEach(file::add);
        return document.put("caution", Texts.of("dock.caution"));
    }

    /** The document of what is asked; throws {@link trimwright.text.NoAnswerException} where the boat was not at rest. */
    public static ObjectNode of(DockRequest request) {
        return of(request, request.check());
    }

    /** {@code dock-list/1}: what the crew does when. */
    public static ObjectNode list() {
        ObjectNode document = JsonOut.document("dock-list/1");
        ArrayNode steps = document.putArray("steps");
        for (DockStep step : DockStep.values()) {
            steps.addObject()
                    .put("step", DockWords.key(step))
                    .put("begin_s", step.begin())
                    .put("end_s", step.end())
                    .put("what", Texts.of("dock.step." + DockWords.key(step)));
        }
        return document;
    }

    static long count(DockAnswer.Checked checked, DockFinding.Verdict verdict) {
        return checked.lines().stream()
                .filter(line -> line.verdict() == verdict)
                .count();
    }

    private static void given(DockGiven given, ObjectNode node) {
        node.put("heel_deg", Units.toDegrees(given.heel()))
                .put("pitch_deg", Units.toDegrees(given.pitch()))
                .put("pull_n", given.pull())
                .put("antenna_aft_m", given.antennaAft())
                .put("antenna_starboard_m", given.antennaStarboard());
    }

    private static void write(DockLine line, ObjectNode node) {
        String suffix = DockWords.suffix(line.item());
        node.put("item", DockWords.key(line.item()))
                .put("what", DockWords.what(line.item()))
                .put("verdict", DockWords.key(line.verdict()))
                .put("finding", DockWords.key(line.finding()))
                .put("read" + suffix, DockWords.inUnit(line.item(), line.read()))
                .put("error" + suffix, DockWords.inUnit(line.item(), line.error()))
                .put("expected" + suffix, DockWords.inUnit(line.item(), line.expected()))
                .put("difference" + suffix, DockWords.inUnit(line.item(), line.difference()))
                .put("tolerance" + suffix, DockWords.inUnit(line.item(), line.tolerance()))
                .put("other", line.other())
                .put("read", DockWords.read(line))
                .put("expected", DockWords.number(line.item(), line.expected()))
                .put("difference", DockWords.number(line.item(), line.difference()))
                .put("says", DockWords.says(line));
    }

    private static void write(DockOffset offset, ObjectNode node) {
        node.put("quantity", DockWords.key(offset.quantity()));
        if (offset.quantity() == DockOffset.Quantity.SHEET_LOAD) {
            node.put("factor_ratio", offset.value()).put("standard_error_ratio", offset.standardError());
        } else {
            node.put("offset_deg", Units.toDegrees(offset.value()))
                    .put("standard_error_deg", Units.toDegrees(offset.standardError()));
        }
    }
}
