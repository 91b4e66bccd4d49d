package trimwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trimwright.debrief.BoatDebrief;
import trimwright.text.Texts;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/** Quantities over the time of a moment, a row each, a line a boat. */
final class LanesDrawing {
    private static final int WIDTH = 900;
    private static final int HIGH = 90;
    /** Points of a line; chosen, what the width shows. */
    private static final int MOST = 600;

    private final Html page;
    private final List<BoatDebrief> boats;
    private final int from;
    private final int to;

    /** @param from first instant of the session's clock, {@code to} the one after the last */
    LanesDrawing(Html page, List<BoatDebrief> boats, int from, int to) {
        this.page = page;
        this.boats = boats;
        this.from = from;
        this.to = to;
    }

    void put() {
        for (Lane lane : Lane.ALL) {
            Map<Integer, double[]> lines = new LinkedHashMap<>();
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int place = 0; place < boats.size(); place++) {
                double[] line = line(lane, boats.get(place).wind());
                for (double value : line) {
                    if (!Double.isNaN(value)) {
                        least = Math.min(least, value);
                        most = Math.max(most, value);
                    }
                }
                lines.put(place, line);
            }
            if (least <= most) {
                put(lane, lines, Scale.around(least, most, HIGH - 16, 6));
            }
        }
    }

    private void put(Lane lane, Map<Integer, double[]> lines, Scale up) {
        page.put("h3", Texts.of("report.lane." + lane.key()));
        page.draw(WIDTH, HIGH, Texts.of("report.lane." + lane.key()), () -> {
            for (double tick : up.ticks(4)) {
                String y = Html.at(up.at(tick));
                page.alone("line", "x1", "46", "x2", Html.at(WIDTH - 6), "y1", y, "y2", y, "class", "grid");
                page.put(
                        "text",
                        Day.number("%.5g", tick).replaceAll("\\.?0+$", ""),
                        "x",
                        "42",
                        "y",
                        y,
                        "text-anchor",
                        "end");
            }
            Scale along = new Scale(0, (to - from) * boats.get(0).wind().clock().step(), 46, WIDTH - 6);
            for (double tick : along.ticks(8)) {
                page.put(
                        "text",
                        Texts.of("report.seconds", tick),
                        "x",
                        Html.at(along.at(tick)),
                        "y",
                        Html.at(HIGH - 3),
                        "text-anchor",
                        "middle");
            }
            lines.forEach((place, line) -> {
                BoatInk ink = BoatInk.of(place);
                for (String piece : pieces(line, up, along)) {
                    ink.line(page, piece, boats.get(place).boat());
                }
            });
        });
    }

    /** Runs without a gap. */
    private List<String> pieces(double[] line, Scale up, Scale along) {
        List<String> pieces = new ArrayList<>();
        int stride = Math.max(1, line.length / MOST);
        StringBuilder piece = new StringBuilder();
        for (int i = 0; i < line.length; i += stride) {
            if (Double.isNaN(line[i])) {
                if (piece.length() > 0) {
                    pieces.add(piece.toString().strip());
                    piece.setLength(0);
                }
            } else {
                double x = along.least() + (along.most() - along.least()) * i / Math.max(1, line.length - 1);
                piece.append(Html.at(along.at(x)))
                        .append(',')
                        .append(Html.at(up.at(line[i])))
                        .append(' ');
            }
        }
        if (piece.length() > 0) {
            pieces.add(piece.toString().strip());
        }
        return pieces;
    }

    /** In the unit shown, free of the tack; NaN where nothing is known. */
    double[] line(Lane lane, WindTrack track) {
        double[] line = new double[to - from];
        for (int i = from; i < to; i++) {
            double value = track.has(lane.quantity()) ? track.get(lane.quantity(), i) : Double.NaN;
            double side = lane.isOfTack() ? Math.signum(track.get(Quantity.COURSE_TWA, i)) : 1;
            line[i - from] = value * lane.unit() * side;
        }
        return line;
    }
}
