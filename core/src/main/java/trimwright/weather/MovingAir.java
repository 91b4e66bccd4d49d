package trimwright.weather;

/** Air that moves over the water. */
public interface MovingAir {
    /** Its velocity at a place (m north and east of the origin) and time (s from its zero), at its reference height. */
    AirVelocity at(double north, double east, double time);

    /** The same with what differs over height; where nothing else is said, nothing does. */
    default AirColumn column(double north, double east, double time) {
        return new AirColumn(at(north, east, time), GustColumn.ALIKE);
    }
}
