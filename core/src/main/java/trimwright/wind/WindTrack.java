package trimwright.wind;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import trimwright.units.Circular;

/**
 * A boat's track on the session clock with the wind it sailed in. Owns its arrays. A quantity that the log does not
 * give is absent: {@link #get(Quantity, int)} is NaN throughout.
 */
public final class WindTrack {
    private final String boat;
    private final SessionClock clock;
    private final Map<Quantity, double[]> values;
    private final SpeedSource speedSource;
    private final SpeedReason speedReason;
    private final WindNoise noise;
    private final WindCorrection correction;
    private final Set<WindCaveat> caveats;

    WindTrack(
            String boat,
            SessionClock clock,
            Map<Quantity, double[]> values,
            Basis basis,
            WindNoise noise,
            WindCorrection correction,
            Set<WindCaveat> caveats) {
        this.boat = boat;
        this.clock = clock;
        this.values = new EnumMap<>(values);
        this.speedSource = basis.source();
        this.speedReason = basis.reason();
        this.noise = noise;
        this.correction = correction;
        EnumSet<WindCaveat> sorted = EnumSet.noneOf(WindCaveat.class);
        sorted.addAll(caveats);
        this.caveats = Collections.unmodifiableSet(sorted);
    }

    /** Which speed is judged, and why that one. */
    public record Basis(SpeedSource source, SpeedReason reason) {}

    public String boat() {
        return boat;
    }

    public SessionClock clock() {
        return clock;
    }

    public int size() {
        return clock.size();
    }

    public SpeedSource speedSource() {
        return speedSource;
    }

    public SpeedReason speedReason() {
        return speedReason;
    }

    /** What the smoother took for scatter and walk of the wind. */
    public WindNoise noise() {
        return noise;
    }

    /** What was taken off the readings of the wind sensor. */
    public WindCorrection correction() {
        return correction;
    }

    /** In the order of the enumeration. */
    public Set<WindCaveat> caveats() {
        return caveats;
    }

    /** Whether the log gives that quantity at any time. */
    public boolean has(Quantity quantity) {
        return values.containsKey(quantity);
    }

    /** The value at an instant, NaN where absent. */
    public double get(Quantity quantity, int i) {
        double[] column = values.get(quantity);
        return column == null ? Double.NaN : column[i];
    }

    /** A copy of the whole column, all NaN where the quantity is absent. */
    public double[] toArray(Quantity quantity) {
        double[] column = values.get(quantity);
        if (column == null) {
            double[] absent = new double[size()];
            Arrays.fill(absent, Double.NaN);
            return absent;
        }
        return column.clone();
    }

    /** Mean over {@code [from, to)} by the quantity's kind, NaN without samples. */
    public double mean(Quantity quantity, int from, int to) {
        double[] column = values.get(quantity);
        if (column == null) {
            return Double.NaN;
        }
        if (quantity.kind() != Quantity.Kind.PLAIN) {
            return Resampling.range(Circular.mean(column, from, to), quantity.kind());
        }
        double sum = 0;
        int count = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(column[i])) {
                sum += column[i];
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** Standard deviation over {@code [from, to)} by the quantity's kind (population form), NaN without samples. */
    public double deviation(Quantity quantity, int from, int to) {
        double[] column = values.get(quantity);
        if (column == null) {
            return Double.NaN;
        }
        if (quantity.kind() != Quantity.Kind.PLAIN) {
            return Circular.deviation(column, from, to);
        }
        double mean = mean(quantity, from, to);
        double sum = 0;
        int count = 0;
        for (int i = from; i < to; i++) {
            if (!Double.isNaN(column[i])) {
                sum += (column[i] - mean) * (column[i] - mean);
                count++;
            }
        }
        return count == 0 ? Double.NaN : Math.sqrt(sum / count);
    }
}
