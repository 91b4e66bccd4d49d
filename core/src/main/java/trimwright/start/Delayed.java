package trimwright.start;

/**
 * What a delay came to, against a boat that sailed on.
 *
 * @param lost way along the course across the line over the target speed (s)
 * @param regained seconds from its beginning until she had her speed again for good, NaN where she had not a minute later
 * @param least slowest (m/s)
 * @param across metres across the course at the end, positive away from the wind
 * @param touched whether a hull carried weight
 * @param capsized whether she went over
 */
public record Delayed(double lost, double regained, double least, double across, boolean touched, boolean capsized) {}
