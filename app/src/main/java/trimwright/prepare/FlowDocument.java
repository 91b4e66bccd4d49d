package trimwright.prepare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.panel.IdealFlow;
import trimwright.panel.PressureRule;
import trimwright.text.FixedDecimals;
import trimwright.text.JsonOut;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.text.Version;
import trimwright.units.Units;

/** Computed flow about a section: {@code section-flow/1}, the same as comma-separated values, and a table for people. */
public final class FlowDocument {
    private FlowDocument() {}

    /** The JSON document. */
    public static ObjectNode json(FlowRequest request, List<FlowRow> rows) {
        ObjectNode document = JsonOut.document("section-flow/1");
        document.putObject("model").put("version", Version.get());
        document.put("profile", request.name())
                .put("fluid", request.fluid().name().toLowerCase(Locale.ROOT))
                .put("reynolds", Math.round(request.reynolds()))
                .put("critical_exponent", request.critical());
        PressureRule.Limit limit = limit(request);
        if (limit != null) {
            document.putObject("pressure_rule")
                    .put("pressure_rise", PressureRule.rise(request.reynolds()))
                    .put("alpha_deg", Units.toDegrees(limit.alpha()))
                    .put("lift_coefficient", limit.lift())
                    .put("element", limit.element() + 1);
        }
        ArrayNode points = document.putArray("points");
        for (FlowRow row : rows) {
            ObjectNode point = points.addObject()
                    .put("alpha_deg", Units.toDegrees(row.alpha()))
                    .put("solved", row.isSolved())
                    .put("reason", row.reason());
            if (row.isSolved()) {
                point.put("lift_coefficient", row.lift())
                        .put("drag_coefficient", row.drag())
                        .put("moment_coefficient", row.moment());
                ArrayNode caveats = point.putArray("caveats");
                if (row.isPastStall()) {
                    caveats.add("past_stall");
                }
                ArrayNode elements = point.putArray("elements");
                for (FlowRow.Element element : row.elements()) {
                    elements.addObject()
                            .put("lift_coefficient", element.lift())
                            .put("pressure_rise", element.pressureRise())
                            .put("upper_transition_ratio", element.upperTransition())
                            .put("lower_transition_ratio", element.lowerTransition())
                            .put("upper_separation_ratio", element.upperSeparation())
                            .put("lower_separation_ratio", element.lowerSeparation());
                }
            }
        }
        return document;
    }

    /** Where the pressure-difference rule sets in, for people. */
    public static String limitLine(FlowRequest request) {
        PressureRule.Limit limit = limit(request);
        return limit == null
                ? Texts.of("section.pressure_rule_not_met")
                : Texts.of(
                        "section.pressure_rule",
                        decimal(limit.lift(), 2),
                        decimal(Units.toDegrees(limit.alpha()), 1),
                        limit.element() + 1,
                        decimal(PressureRule.rise(request.reynolds()), 1));
    }

    private static PressureRule.@Nullable Limit limit(FlowRequest request) {
        return PressureRule.find(new IdealFlow(request.elements()), request.reynolds());
    }

    /** One line an angle; the keys of the document as header, places of the first element. */
    public static String csv(List<FlowRow> rows) {
        StringBuilder text = new StringBuilder("alpha_deg,solved,lift_coefficient,drag_coefficient,moment_coefficient,"
                + "upper_transition_ratio,lower_transition_ratio,upper_separation_ratio,lower_separation_ratio\n");
        for (FlowRow row : rows) {
            text.append(fixed("alpha_deg", Units.toDegrees(row.alpha())))
                    .append(',')
                    .append(row.isSolved());
            text.append(',').append(fixed("lift_coefficient", row.lift()));
            text.append(',').append(fixed("drag_coefficient", row.drag()));
            text.append(',').append(fixed("moment_coefficient", row.moment()));
            FlowRow.Element first =
                    row.elements().isEmpty() ? null : row.elements().get(0);
            text.append(',').append(fixed("x_ratio", first == null ? Double.NaN : first.upperTransition()));
            text.append(',').append(fixed("x_ratio", first == null ? Double.NaN : first.lowerTransition()));
            text.append(',').append(fixed("x_ratio", first == null ? Double.NaN : first.upperSeparation()));
            text.append(',').append(fixed("x_ratio", first == null ? Double.NaN : first.lowerSeparation()));
            text.append('\n');
        }
        return text.toString();
    }

    /** The table for people. */
    public static String table(List<FlowRow> rows) {
        TextTable table = new TextTable(Texts.of("section.flow_head"));
        for (FlowRow row : rows) {
            List<String> cells = new ArrayList<>();
            cells.add(decimal(Units.toDegrees(row.alpha()), 2));
            cells.add(decimal(row.lift(), 4));
            cells.add(decimal(row.drag(), 5));
            cells.add(decimal(row.lift() / row.drag(), 1));
            cells.add(decimal(row.moment(), 4));
            FlowRow.Element first =
                    row.elements().isEmpty() ? null : row.elements().get(0);
            cells.add(first == null ? "-" : decimal(first.upperTransition(), 3));
            cells.add(first == null ? "-" : decimal(first.lowerTransition(), 3));
            cells.add(row.isSolved() ? remark(row) : String.valueOf(row.reason()));
            table.row(cells);
        }
        return table.text();
    }

    private static String remark(FlowRow row) {
        if (row.isPastStall()) {
            return Texts.of("section.past_stall");
        }
        List<String> remarks = new ArrayList<>();
        for (int k = 0; k < row.elements().size(); k++) {
            FlowRow.Element element = row.elements().get(k);
            String name = row.elements().size() == 1 ? "" : Texts.of("section.element", k + 1) + " ";
            if (element.upperSeparation() < SEPARATED) {
                remarks.add(name + Texts.of("section.separated_upper", decimal(element.upperSeparation(), 2)));
            }
            if (element.lowerSeparation() < SEPARATED) {
                remarks.add(name + Texts.of("section.separated_lower", decimal(element.lowerSeparation(), 2)));
            }
        }
        return String.join(", ", remarks);
    }

    /** Separation behind this share of the chord is not told: every thick trailing edge has it. Chosen. */
    private static final double SEPARATED = 0.98;

    private static String decimal(double value, int decimals) {
        return Double.isNaN(value)
                ? "-"
                : BigDecimal.valueOf(value)
                        .setScale(decimals, RoundingMode.HALF_EVEN)
                        .toPlainString();
    }

    private static String fixed(String key, double value) {
        return Double.isNaN(value) ? "" : decimal(value, FixedDecimals.of(key));
    }
}
