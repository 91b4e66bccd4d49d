package trimwright.wind;

import org.jspecify.annotations.Nullable;
import trimwright.track.Paths;

/** What a {@link WindTrack} holds over its clock: SI, radians, signed in body axes (not free of the tack). */
public enum Quantity {
    HEADING(Kind.COMPASS, null),
    /** Direction of motion: course over ground, or heading less leeway where speed is through water. */
    COURSE(Kind.COMPASS, null),
    /** Of the heading (rad/s), positive to starboard. */
    RATE_OF_TURN(Kind.PLAIN, null),
    /** The speed that is judged: over ground or through water as {@link WindTrack#speedSource()} says (m/s). */
    SPEED(Kind.PLAIN, null),
    /** Made good against the smoothed wind (m/s): positive to windward, negative to leeward. */
    VMG(Kind.PLAIN, null),
    /** Smoothed, at the reference height if the sensor's height is known, else at the sensor (m/s). */
    TWS(Kind.PLAIN, null),
    /** Smoothed; where the wind comes from. */
    TWD(Kind.COMPASS, null),
    /** Smoothed wind from the bow, positive from starboard. */
    TWA(Kind.SIGNED, null),
    /** Smoothed wind from the direction of motion, positive from starboard: the angle that targets speak of. */
    COURSE_TWA(Kind.SIGNED, null),
    /** Before smoothing, at the same height as {@link #TWS} (m/s). */
    RAW_TWS(Kind.PLAIN, null),
    /** Before smoothing. */
    RAW_TWD(Kind.COMPASS, null),
    AWA(Kind.SIGNED, Paths.AWA),
    AWS(Kind.PLAIN, Paths.AWS),
    STW(Kind.PLAIN, Paths.STW),
    SOG(Kind.PLAIN, Paths.SOG),
    COG(Kind.COMPASS, Paths.COG),
    ROLL(Kind.SIGNED, Paths.ROLL),
    PITCH(Kind.SIGNED, Paths.PITCH),
    LEEWAY(Kind.SIGNED, Paths.LEEWAY),
    RUDDER(Kind.SIGNED, Paths.RUDDER),
    CAMBER(Kind.SIGNED, Paths.CAMBER),
    TWIST(Kind.SIGNED, Paths.TWIST),
    SHEET(Kind.SIGNED, Paths.SHEET),
    SHEET_LOAD(Kind.PLAIN, Paths.SHEET_LOAD),
    RIDE_HEIGHT(Kind.PLAIN, Paths.RIDE_HEIGHT),
    /** North positive (rad). */
    LATITUDE(Kind.SIGNED, Paths.LATITUDE),
    /** East positive (rad). */
    LONGITUDE(Kind.SIGNED, Paths.LONGITUDE);

    /** How a quantity is interpolated and averaged. */
    public enum Kind {
        /** As a number. */
        PLAIN,
        /** As a unit vector, given in (-pi, pi]. */
        SIGNED,
        /** As a unit vector, given in [0, 2 pi). */
        COMPASS
    }

    private final Kind kind;
    private final @Nullable String path;

    Quantity(Kind kind, @Nullable String path) {
        this.kind = kind;
        this.path = path;
    }

    public Kind kind() {
        return kind;
    }

    /** The channel that it is resampled from as it stands, or null where it is computed. */
    public @Nullable String path() {
        return path;
    }
}
