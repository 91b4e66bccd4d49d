package trimwright.crew;

import trimwright.course.PlanePoint;

/**
 * Another boat as seen from outside.
 *
 * @param place of her bow
 * @param course over ground (rad)
 * @param speed over ground (m/s)
 * @param tack +1 with the wind from starboard, -1 from port
 */
public record OtherBoat(PlanePoint place, double course, double speed, int tack) {}
