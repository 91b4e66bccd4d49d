package trimwright.dockside;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import trimwright.dock.DockAnswer;
import trimwright.dock.DockFinding;
import trimwright.dock.DockLine;
import trimwright.dock.DockOffset;
import trimwright.dock.DockStep;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** A dock check for a terminal, and the crew's list. */
public final class DockText {
    private DockText() {}

    public static String of(DockRequest request, DockAnswer.Checked checked) {
        StringBuilder text = new StringBuilder();
        line(
                Texts.of(
                        "dock.title",
                        request.track().boat(),
                        Instant.ofEpochSecond(0, checked.startNanos())
                                .truncatedTo(ChronoUnit.SECONDS)
                                .toString(),
                        request.file().boat().title(),
                        request.wing().id(),
                        DockDocument.count(checked, DockFinding.Verdict.STOP),
                        DockDocument.count(checked, DockFinding.Verdict.NOTE),
                        DockDocument.count(checked, DockFinding.Verdict.PASS)),
                text);
        TextTable table = new TextTable(Texts.of("dock.head"));
        for (DockLine one : checked.lines()) {
            table.row(List.of(
                    DockWords.what(one.item()),
                    DockWords.read(one),
                    DockWords.number(one.item(), one.expected()),
                    DockWords.number(one.item(), one.difference()),
                    DockWords.verdict(one.verdict()),
                    DockWords.says(one)));
        }
        text.append(table.text());
        if (!checked.prior().isEmpty()) {
            line(
                    Texts.of(
                            "dock.prior",
                            checked.prior().stream().map(DockText::offset).collect(Collectors.joining(", "))),
                    text);
        }
        List<String> forFile = FileLines.of(checked);
        if (!forFile.isEmpty()) {
            line(Texts.of("dock.for_file"), text);
            forFile.forEach(one -> line("  " + one, text));
        }
        line(Texts.of("dock.caution"), text);
        return text.toString();
    }

    /** What the crew does when, a line a step. */
    public static String list() {
        StringBuilder text = new StringBuilder();
        line(Texts.of("dock.list"), text);
        for (DockStep step : DockStep.values()) {
            line(
                    String.format(
                            "%2d:%02d  %s",
                            (int) step.begin() / 60,
                            (int) step.begin() % 60,
                            Texts.of("dock.step." + DockWords.key(step))),
                    text);
        }
        return text.toString();
    }

    private static String offset(DockOffset offset) {
        String name = Texts.of("dock.quantity." + DockWords.key(offset.quantity()));
        return offset.quantity() == DockOffset.Quantity.SHEET_LOAD
                ? Texts.of("dock.factor", name, offset.value(), offset.standardError())
                : Texts.of(
                        "dock.offset", name, Units.toDegrees(offset.value()), Units.toDegrees(offset.standardError()));
    }

    private static void line(String line, StringBuilder text) {
        text.append(line).append('\n');
    }
}
