package trimwright.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import trimwright.text.Texts;

/** Seconds lost by cause, a bar a boat: grey of its own, a letter and a word for each cause. */
final class CausesDrawing {
    /** As the ladder has them; causes of one boat and of all are looked for under the same place. */
    static final List<String> CAUSES =
            List.of("off_foil", "turns_free", "turns_forced", "other_air", "trim", "heel_height", "angle", "remaining");

    private static final List<String> INKS =
            List.of("#16202b", "#0072b2", "#56b4e9", "#e69f00", "#d55e00", "#cc79a7", "#009e73", "#b9c0c6");
    private static final int WIDTH = 900;
    private static final int ROW = 34;
    private static final double NARROW = 14;

    private CausesDrawing() {}

    static void put(Html page, Day day) {
        List<JsonNode> boats = day.byLoss();
        double most = boats.stream().mapToDouble(CausesDrawing::gone).max().orElse(0);
        if (!(most > 0)) {
            return;
        }
        Scale along = new Scale(0, most, 100, WIDTH - 50);
        int height = ROW * boats.size() + 46;
        page.draw(WIDTH, height, Texts.of("report.causes"), () -> {
            for (int i = 0; i < boats.size(); i++) {
                bar(page, boats.get(i), along, i * ROW + 4.0);
            }
            legend(page, ROW * boats.size() + 14.0);
        });
    }

    /** What was lost, gains left out. */
    private static double gone(JsonNode boat) {
        return CAUSES.stream().mapToDouble(cause -> seconds(boat, cause)).sum();
    }

    private static double seconds(JsonNode boat, String cause) {
        return Math.max(0, Day.lostTo(boat, cause));
    }

    private static void bar(Html page, JsonNode boat, Scale along, double y) {
        page.put("text", Day.name(boat), "x", "94", "y", Html.at(y + 17), "text-anchor", "end");
        double sum = 0;
        for (int i = 0; i < CAUSES.size(); i++) {
            double seconds = seconds(boat, CAUSES.get(i));
            double from = along.at(sum);
            double to = along.at(sum + seconds);
            sum += seconds;
            page.alone(
                    "rect",
                    "x",
                    Html.at(from),
                    "y",
                    Html.at(y),
                    "width",
                    Html.at(to - from),
                    "height",
                    "24",
                    "fill",
                    INKS.get(i),
                    "stroke",
                    "#ffffff");
            if (to - from > NARROW) {
                page.put(
                        "text",
                        Integer.toString(i + 1),
                        "x",
                        Html.at(0.5 * (from + to)),
                        "y",
                        Html.at(y + 17),
                        "text-anchor",
                        "middle",
                        "fill",
                        i < 2 ? "#ffffff" : "#16202b");
            }
        }
        page.put("text", Day.number("%.0f s", sum), "x", Html.at(along.at(sum) + 6), "y", Html.at(y + 17));
    }

    private static void legend(Html page, double y) {
        double x = 4;
        for (int i = 0; i < CAUSES.size(); i++) {
            String name = (i + 1) + " " + Texts.of("debrief.cause." + CAUSES.get(i));
            page.alone("rect", "x", Html.at(x), "y", Html.at(y), "width", "12", "height", "12", "fill", INKS.get(i));
            page.put("text", name, "x", Html.at(x + 16), "y", Html.at(y + 11));
            x += 30 + 7.2 * name.length();
        }
    }
}
