package trimwright.debrief;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trimwright.units.Angles;
import trimwright.units.Units;
import trimwright.wind.Quantity;

/** Mean errors of each boat's wind upwind and downwind: what no smoothing takes away, and every target is read at. */
final class WindCount {
    private final List<Double> speeds = new ArrayList<>();
    private final List<Double> wides = new ArrayList<>();

    /** Adds each boat's straight sailing in legs, up and down the wind apart. */
    void add(SimulatedDay day, DebriefReport report) throws IOException {
        double zero = SimulatedDay.zero(report);
        for (BoatDebrief boat : report.boats()) {
            for (int side = -1; side <= 1; side += 2) {
                double speed = 0;
                double wide = 0;
                int count = 0;
                for (String[] cells : day.seconds(boat.boat())) {
                    double toBow = Angles.signed(Units.fromDegrees(number(cells, 4) - number(cells, 7)));
                    int i = (int) Math.round(
                            (number(cells, 0) + zero) / report.clock().step());
                    double tws = i < 0 || i >= report.clock().size()
                            ? Double.NaN
                            : boat.wind().get(Quantity.TWS, i);
                    boolean counts = number(cells, 16) >= 0 && number(cells, 17) == 0 && !Double.isNaN(tws);
                    if (counts && Math.abs(Math.cos(toBow)) > 0.3 && Math.signum(Math.cos(toBow)) == side) {
                        double from = boat.wind().get(Quantity.TWD, i);
                        speed += tws / Units.fromKnots(number(cells, 3)) - 1;
                        wide += Math.signum(toBow) * Angles.difference(from, Units.fromDegrees(number(cells, 4)));
                        count++;
                    }
                }
                if (count > 60) {
                    speeds.add(speed / count);
                    wides.add(wide / count);
                }
            }
        }
    }

    /** Root mean squares and means: speed over the true one, angle from the bow too wide. */
    String row(String name) {
        return String.format(
                Locale.ROOT,
                "| %s | %d | %.1f %% | %.1f %% | %.2f deg | %.2f deg |%n",
                name,
                speeds.size(),
                100 * root(speeds),
                100 * mean(speeds),
                Math.toDegrees(root(wides)),
                Math.toDegrees(mean(wides)));
    }

    private static double number(String[] cells, int cell) {
        return Double.parseDouble(cells[cell]);
    }

    private static double root(List<Double> values) {
        return Math.sqrt(values.stream().mapToDouble(v -> v * v).average().orElse(Double.NaN));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(v -> v).average().orElse(Double.NaN);
    }
}
