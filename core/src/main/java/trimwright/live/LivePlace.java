package trimwright.live;

/**
 * Where a boat's satellite receiver is and where she goes; NaN where it is not known or not fresh.
 *
 * @param latitude (rad)
 * @param longitude (rad)
 * @param heading true (rad)
 * @param course over ground (rad), the heading where she hardly moves
 */
public record LivePlace(double latitude, double longitude, double heading, double course) {}
