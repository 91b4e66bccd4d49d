package trimwright.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trimwright.text.Texts;

/** Seconds lost against the reference along the course, a line a boat, so that one sees where. */
final class LossDrawing {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 380;
    private static final Scale NO_LEG = new Scale(0, 1, 0, 1);

    private final Html page;
    private final Day day;
    private final Map<JsonNode, List<double[]>> lines = new LinkedHashMap<>();
    private Scale along = NO_LEG;
    private Scale lost = NO_LEG;

    private LossDrawing(Html page, Day day) {
        this.page = page;
        this.day = day;
    }

    static void put(Html page, Day day) {
        LossDrawing drawing = new LossDrawing(page, day);
        double far = 0;
        double most = 0;
        double least = 0;
        for (JsonNode boat : day.boats()) {
            List<double[]> line = line(boat);
            drawing.lines.put(boat, line);
            for (double[] point : line) {
                far = Math.max(far, point[0]);
                most = Math.max(most, point[1]);
                least = Math.min(least, point[1]);
            }
        }
        if (far == 0 || !(most > least)) {
            return;
        }
        drawing.along = new Scale(0, far, 50, WIDTH - 90);
        drawing.lost = Scale.around(least, most, HEIGHT - 40, 14);
        page.draw(WIDTH, HEIGHT, Texts.of("report.lost_along"), drawing::put);
    }

    /** Metres made good along the course and seconds lost until there. */
    private static List<double[]> line(JsonNode boat) {
        List<double[]> line = new ArrayList<>();
        double metres = 0;
        double seconds = 0;
        for (JsonNode leg : boat.path("legs")) {
            JsonNode made = leg.path("strip").path("made_m");
            JsonNode lost = leg.path("strip").path("lost_s");
            double farthest = 0;
            for (int i = 0; i < made.size(); i++) {
                farthest = Math.max(farthest, made.get(i).asDouble());
                if (lost.get(i).isNumber()) {
                    line.add(new double[] {
                        metres + farthest, seconds + lost.get(i).asDouble()
                    });
                }
            }
            metres += farthest;
            seconds = line.isEmpty() ? 0 : line.get(line.size() - 1)[1];
        }
        return line;
    }

    private void put() {
        grid();
        List<Double> taken = new ArrayList<>();
        for (JsonNode boat : day.byLoss()) {
            List<double[]> line = lines.getOrDefault(boat, List.of());
            if (line.isEmpty()) {
                continue;
            }
            StringBuilder points = new StringBuilder();
            line.forEach(point -> points.append(Html.at(along.at(point[0])))
                    .append(',')
                    .append(Html.at(lost.at(point[1])))
                    .append(' '));
            BoatInk ink = day.ink(boat);
            ink.line(page, points.toString().strip(), Day.name(boat));
            double[] end = line.get(line.size() - 1);
            double y = free(taken, lost.at(end[1]) + 4);
            page.put("text", Day.name(boat), "x", Html.at(along.at(end[0]) + 6), "y", Html.at(y), "fill", ink.colour());
        }
    }

    /** A height at which no other boat's name stands; boats come from the least loss on, so names go up the page. */
    private static double free(List<Double> taken, double wanted) {
        double y = wanted;
        for (double other : taken) {
            y = Math.min(y, other - 13);
        }
        taken.add(y);
        return y;
    }

    private void grid() {
        for (double seconds : lost.ticks(6)) {
            String y = Html.at(lost.at(seconds));
            page.alone("line", "x1", "50", "x2", Html.at(WIDTH - 90), "y1", y, "y2", y, "class", "grid");
            page.put("text", Day.number("%.0f", seconds), "x", "44", "y", y, "text-anchor", "end");
        }
        double metres = 0;
        JsonNode legs = day.boats().get(0).path("legs");
        for (int i = 0; i < legs.size(); i++) {
            String x = Html.at(along.at(metres));
            page.alone("line", "x1", x, "x2", x, "y1", "14", "y2", Html.at(HEIGHT - 40), "class", "grid");
            page.put(
                    "text",
                    Texts.of("report.leg", i + 1, legs.get(i).path("to").asText("")),
                    "x",
                    x,
                    "y",
                    Html.at(HEIGHT - 24));
            JsonNode made = legs.get(i).path("strip").path("made_m");
            double farthest = 0;
            for (JsonNode one : made) {
                farthest = Math.max(farthest, one.asDouble());
            }
            metres += farthest;
        }
        page.put("text", Texts.of("report.lost_axis"), "x", "4", "y", Html.at(HEIGHT - 8));
    }
}
