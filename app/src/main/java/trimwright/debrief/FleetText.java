package trimwright.debrief;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import trimwright.compare.Cause;
import trimwright.compare.LegLedger;
import trimwright.segment.OnCourse;
import trimwright.segment.SailedCourse;
import trimwright.text.TextTable;
import trimwright.text.Texts;

/** The boats of a race in one table: start, time round the course, seconds lost and to what. */
final class FleetText {
    private static final String NONE = "-";

    /** So many causes are named (chosen: what fits on a line). */
    private static final int NAMED = 4;

    private FleetText() {}

    /** Empty where there is no race of several boats. */
    static String of(DebriefReport report) {
        if (report.course() == null || report.boats().size() < 2) {
            return "";
        }
        TextTable table = new TextTable(Texts.of("debrief.fleet.head"));
        report.boats().stream()
                .sorted(Comparator.comparingDouble(FleetText::finish))
                .forEach(boat -> table.row(row(boat)));
        return "\n" + Texts.of("debrief.fleet", report.course().name()) + "\n" + table.text();
    }

    /** What boats did otherwise; empty where there is one. */
    static String found(DebriefReport report) {
        if (report.boats().size() < 2) {
            return "";
        }
        StringBuilder text =
                new StringBuilder("\n").append(Texts.of("debrief.found")).append('\n');
        List<FleetSentences.Finding> found = FleetSentences.of(report);
        if (found.isEmpty()) {
            return text.append(FleetSentences.nothing(report.fleet()))
                    .append('\n')
                    .toString();
        }
        found.forEach(finding -> text.append(finding.sentence()).append('\n'));
        return text.append(Texts.of("debrief.found.note")).append('\n').toString();
    }

    private static List<String> row(BoatDebrief boat) {
        OnCourse on = boat.on();
        SailedCourse.Start start = on == null ? null : on.sailed().start();
        Double share = boat.startShare();
        double lost = boat.comparison().ledgers().stream()
                .mapToDouble(ledger -> ledger.total() - ledger.lossOf(Cause.UNJUDGED))
                .sum();
        double finish = finish(boat);
        return List.of(
                boat.boat(),
                start == null ? NONE : number("%.1f", start.crossed()),
                share == null ? NONE : number("%.0f", 100 * share),
                Double.isInfinite(finish) ? NONE : number("%.0f", finish),
                number("%.0f", lost),
                where(boat));
    }

    /** From the gun to the finish (s), infinite for a boat that did not finish. */
    private static double finish(BoatDebrief boat) {
        OnCourse on = boat.on();
        SailedCourse.Start start = on == null ? null : on.sailed().start();
        if (on == null
                || start == null
                || on.sailed().legs().size() < on.course().legCount()) {
            return Double.POSITIVE_INFINITY;
        }
        SailedCourse.SailedLeg last = on.sailed().legs().get(on.course().legCount() - 1);
        return last.isEnded()
                ? (last.span().to() - start.gun()) * boat.wind().clock().step()
                : Double.POSITIVE_INFINITY;
    }

    private static String where(BoatDebrief boat) {
        Map<Cause, Double> sums = new EnumMap<>(Cause.class);
        for (LegLedger ledger : boat.comparison().ledgers()) {
            ledger.lines().forEach(line -> sums.merge(line.cause(), line.loss(), Double::sum));
        }
        sums.remove(Cause.UNJUDGED);
        return sums.entrySet().stream()
                .sorted(Map.Entry.<Cause, Double>comparingByValue().reversed())
                .limit(NAMED)
                .filter(entry -> entry.getValue() >= 0.5)
                .map(entry -> Texts.of("debrief.cause." + DebriefJson.word(entry.getKey())) + " "
                        + number("%.0f", entry.getValue()))
                .collect(Collectors.joining(", "));
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
