package trimwright.start;

import java.util.ArrayList;
import java.util.List;

/**
 * Seconds to a line at full power from now, by speed and distance, for one wind and one course: what boats in gusts needed.
 *
 * @param speeds from which they gathered speed (m/s), rising
 * @param seconds for each speed those to each distance of {@link StartTrial#DISTANCES} (s): median, a tenth, nine tenths
 */
public record LineTimes(List<Double> speeds, List<List<Spread>> seconds) {
    /** Shares of her power from which speed is gathered (-): chosen, from the slowest to all but full power. */
    private static final List<Double> POWERS = List.of(0.0, 0.2, 0.4, 0.7);

    /** Speeds closer to each other than this make one row (m/s): chosen. */
    private static final double ALIKE = 1;

    public LineTimes {
        speeds = List.copyOf(speeds);
        seconds = seconds.stream().map(List::copyOf).toList();
        if (speeds.isEmpty() || speeds.size() != seconds.size()) {
            throw new IllegalArgumentException("times to a line need a speed for each row");
        }
    }

    /** What those boats needed; at full speed a boat goes on at her target. */
    public static LineTimes of(StartSetup setup, StartPlanner.Trials trials) {
        List<Double> speeds = new ArrayList<>();
        List<List<Spread>> rows = new ArrayList<>();
        for (double power : POWERS) {
            double speed = trials.all(trial -> trial.held(power)).stream()
                    .mapToDouble(Held::speed)
                    .average()
                    .orElse(Double.NaN);
            if (!(speed < setup.target() - ALIKE)
                    || (!speeds.isEmpty() && speed < speeds.get(speeds.size() - 1) + ALIKE)) {
                continue;
            }
            List<Gathered> runs = trials.all(trial -> trial.gathered(power));
            List<Spread> row = new ArrayList<>();
            for (int i = 0; i < StartTrial.DISTANCES.size(); i++) {
                int distance = i;
                row.add(Spread.of(runs, run -> run.reached().get(distance)));
            }
            speeds.add(speed);
            rows.add(row);
        }
        speeds.add(setup.target());
        rows.add(StartTrial.DISTANCES.stream()
                .map(metres -> metres / setup.target())
                .map(time -> new Spread(time, time, time))
                .toList());
        return new LineTimes(speeds, rows);
    }

    /**
     * Seconds to the line.
     *
     * @param speed now (m/s); below the slowest row that row counts, above the target the target
     * @param metres along the course to the line, 0 or more
     * @return NaN beyond the last distance
     */
    public Spread to(double speed, double metres) {
        double[] rows = speeds.stream().mapToDouble(Double::doubleValue).toArray();
        double clamped = Math.max(rows[0], Math.min(rows[rows.length - 1], speed));
        int row = cell(rows, clamped);
        Spread low = along(seconds.get(row), metres);
        if (row == rows.length - 1) {
            return low;
        }
        return low.toward(along(seconds.get(row + 1), metres), (clamped - rows[row]) / (rows[row + 1] - rows[row]));
    }

    private static Spread along(List<Spread> row, double metres) {
        Spread before = new Spread(0, 0, 0);
        double from = 0;
        for (int i = 0; i < row.size(); i++) {
            double until = StartTrial.DISTANCES.get(i);
            if (metres <= until) {
                return before.toward(row.get(i), (metres - from) / (until - from));
            }
            before = row.get(i);
            from = until;
        }
        return new Spread(Double.NaN, Double.NaN, Double.NaN);
    }

    private static int cell(double[] rising, double value) {
        int i = 0;
        while (i < rising.length - 2 && value >= rising[i + 1]) {
            i++;
        }
        return Math.min(i, rising.length - 1);
    }
}
