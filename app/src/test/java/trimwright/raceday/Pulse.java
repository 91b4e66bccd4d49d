package trimwright.raceday;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What it truly saves to take one cause from one boat for a short while: the boat sails on from a moment of its own day
 * without the cause, then with it again, in the wind of the day, until both sail alike again.
 *
 * @param boat its place among the entries
 * @param cause what is taken away, see {@link BranchedLegs}
 * @param from when it is taken away (s)
 * @param alike for how many seconds both fly or do not, and turn or do not, at the same times; what comes later is of
 *     having come down, or turned, at another time
 * @param saved seconds that the branch gains on the day in each second from there, at the pace of the target
 */
public record Pulse(int boat, String cause, int from, int alike, List<Double> saved) {
    public Pulse {
        saved = List.copyOf(saved);
    }

    /** As long as both sail in the same way (s). */
    public double direct() {
        return saved.subList(0, alike).stream().mapToDouble(Double::doubleValue).sum();
    }

    public double sum() {
        return saved.stream().mapToDouble(Double::doubleValue).sum();
    }

    String line() {
        StringBuilder text = new StringBuilder(boat + "," + cause + "," + from + "," + alike);
        saved.forEach(value -> text.append(String.format(Locale.ROOT, ",%.4f", value)));
        return text.toString();
    }

    static Pulse of(String line) {
        String[] cells = line.split(",", -1);
        List<Double> saved = new ArrayList<>();
        for (int i = 4; i < cells.length; i++) {
            saved.add(Double.parseDouble(cells[i]));
        }
        return new Pulse(
                Integer.parseInt(cells[0]), cells[1], Integer.parseInt(cells[2]), Integer.parseInt(cells[3]), saved);
    }
}
