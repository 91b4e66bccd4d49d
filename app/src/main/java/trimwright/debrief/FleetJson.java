package trimwright.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.fleet.Difference;
import trimwright.fleet.FleetFindings;
import trimwright.text.JsonOut;
import trimwright.units.Units;
import trimwright.wind.SessionClock;

/** The part of {@code debrief/1} that compares boats. */
final class FleetJson {
    private FleetJson() {}

    /** Null where there are not two boats. */
    static @Nullable ObjectNode of(DebriefReport report) {
        if (report.boats().size() < 2) {
            return null;
        }
        FleetFindings findings = report.fleet();
        SessionClock clock = report.clock();
        ObjectNode node = JsonOut.mapper().createObjectNode();
        node.put("block_s", findings.block());
        node.put("false_share_ratio", FleetFindings.FALSE_SHARE);
        List<FleetSentences.Finding> found = FleetSentences.of(report);
        node.put("nothing", found.isEmpty() ? FleetSentences.nothing(findings) : null);
        ArrayNode list = node.putArray("findings");
        found.forEach(finding -> finding(clock, finding, list.addObject()));
        ArrayNode all = node.putArray("differences");
        findings.differences().forEach(one -> difference(one, all.addObject()));
        return node;
    }

    private static void finding(SessionClock clock, FleetSentences.Finding finding, ObjectNode node) {
        Difference first = finding.first();
        node.put("boat", first.boat());
        node.put("kind", DebriefJson.word(first.on()));
        node.put("sentence", finding.sentence());
        TheirTrim model = finding.model();
        node.put("model_made_good_kn", model == null ? null : Units.toKnots(model.made()));
        ArrayNode with = node.putArray("model_with");
        if (model != null) {
            model.with().forEach(question -> with.add(DebriefJson.word(question)));
        }
        Difference.Evidence evidence = first.evidence();
        if (evidence.from() < 0) {
            node.putNull("start_s").putNull("duration_s");
        } else {
            node.put("start_s", clock.seconds(evidence.from()));
            node.put("duration_s", (evidence.to() - evidence.from()) * clock.step());
        }
    }

    private static void difference(Difference one, ObjectNode node) {
        double factor = FleetSentences.unit(one.question());
        String suffix = FleetSentences.suffix(one.question());
        node.put("boat", one.boat());
        node.put("kind", DebriefJson.word(one.on()));
        node.put("question", DebriefJson.word(one.question()));
        node.put("value" + suffix, factor * one.value());
        node.put("low" + suffix, factor * one.low());
        node.put("high" + suffix, factor * one.high());
        node.put("chance_ratio", one.chance());
        node.put("told", one.isTold());
        node.put("compared", one.evidence().seconds());
        node.put("independent", one.evidence().blocks());
        Double low = one.evidence().lowWind();
        Double high = one.evidence().highWind();
        node.put("tws_low_kn", low == null ? null : Units.toKnots(low));
        node.put("tws_high_kn", high == null ? null : Units.toKnots(high));
    }
}
