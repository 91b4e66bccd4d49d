package trimwright.start;

import java.util.List;

/**
 * Time and way at full power, of one run.
 *
 * @param reached seconds until each distance of {@link StartTrial#DISTANCES} along the course across the line, NaN where it was not
 *     reached
 * @param seconds until she had {@link StartTrial#FULL} of her target, NaN where she never had
 * @param metres along the course across the line until then
 * @param across metres across that course until then, positive away from the wind
 * @param touched whether a hull carried weight after she had been free of the water
 * @param capsized whether she went over
 */
public record Gathered(
        List<Double> reached, double seconds, double metres, double across, boolean touched, boolean capsized) {
    public Gathered {
        reached = List.copyOf(reached);
    }
}
