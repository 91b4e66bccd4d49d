package trimwright.air;

import trimwright.units.Angles;

/**
 * Water moving under the boat: heading and speed through the water, set and drift, track and speed over ground.
 *
 * @param set direction that the water moves to (rad), [0, 2 pi)
 * @param drift speed of the water over ground (m/s), not negative
 */
public record CurrentTriangle(double set, double drift) {
    /** A direction (rad, [0, 2 pi)) and a speed (m/s). */
    public record Way(double direction, double speed) {}

    /** Sealed: a track either can be held or the current is too strong for it. */
    public sealed interface Course permits Held, CannotBeHeld {}

    /** Steer {@code heading} (rad) and make {@code speedOverGround} (m/s) along the wanted track. */
    public record Held(double heading, double speedOverGround) implements Course {}

    /** The current carries the boat off the track faster than it can steer against it. */
    public record CannotBeHeld() implements Course {}

    /** Track and speed over ground of a boat with this heading (rad) and speed through the water (m/s). */
    public Way overGround(double heading, double speed) {
        double north = speed * StrictMath.cos(heading) + drift * StrictMath.cos(set);
        double east = speed * StrictMath.sin(heading) + drift * StrictMath.sin(set);
        return new Way(Angles.compass(StrictMath.atan2(east, north)), StrictMath.hypot(north, east));
    }

    /** What to steer to make good a track (rad) at a speed through the water (m/s). */
    public Course courseToSteer(double track, double speed) {
        double across = drift * StrictMath.sin(set - track);
        if (Math.abs(across) >= speed) {
            return new CannotBeHeld();
        }
        double correction = StrictMath.asin(across / speed);
        double along = speed * StrictMath.cos(correction) + drift * StrictMath.cos(set - track);
        return along > 0 ? new Held(Angles.compass(track - correction), along) : new CannotBeHeld();
    }
}
