package trimwright.debrief;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import trimwright.boat.WingSpec;
import trimwright.compare.OthersAir;
import trimwright.segment.OnCourse;
import trimwright.target.TargetBook;
import trimwright.units.Units;
import trimwright.wind.Quantity;

/** Wind that others took, by the debrief's wake model from logged tracks, against what they truly took, second by second. */
final class WakeCount {
    private final List<Double> found = new ArrayList<>();
    private final List<Double> truth = new ArrayList<>();

    void add(SimulatedDay day, DebriefReport report, TargetBook book) throws IOException {
        double zero = SimulatedDay.zero(report);
        WingSpec wing = SimulatedDay.wing();
        double head = wing.footHeight()
                + wing.stations().get(wing.stations().size() - 1).height();
        for (BoatDebrief boat : report.boats()) {
            OnCourse on = boat.on();
            if (on == null) {
                continue;
            }
            double[] clear = new OthersAir(boat.wind(), on.bow(), on.others(), book, head).clearWind();
            for (String[] cells : day.seconds(boat.boat())) {
                int i = (int) Math.round(
                        (Double.parseDouble(cells[0]) + zero) / report.clock().step());
                int leg = Integer.parseInt(cells[16]);
                if (leg >= 0 && i >= 0 && i < clear.length) {
                    double tws = boat.wind().get(Quantity.TWS, i);
                    if (!Double.isNaN(tws)) {
                        found.add(Units.toKnots((clear[i] - 1) * tws));
                        truth.add(Double.parseDouble(cells[5]));
                    }
                }
            }
        }
    }

    String row() {
        double[] f = found.stream().mapToDouble(Double::doubleValue).toArray();
        double[] t = truth.stream().mapToDouble(Double::doubleValue).toArray();
        return String.format(
                Locale.ROOT,
                "wakes: %d s, mean truly %.2f kn, found %.2f kn, correlation %.2f%n",
                f.length,
                mean(t),
                mean(f),
                new PearsonsCorrelation().correlation(f, t));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
