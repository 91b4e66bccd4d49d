package trimwright.weather;

/** Air that moves over the water. */
public interface MovingAir {
    /** Its velocity at a place (m north and east of the origin) and time (s from its zero), at its reference height. */
    AirVelocity at(double north, double east, double time);
}
