package trimwright.live;

import java.util.List;
import trimwright.track.Paths;

/** Instruments as a crew names them, by the channels that they give. */
public enum Sensor {
    WIND(Paths.AWA, Paths.AWS),
    HEADING(Paths.HEADING, Paths.HEADING_MAGNETIC),
    POSITION(Paths.SOG, Paths.COG),
    LOG(Paths.STW),
    ATTITUDE(Paths.ROLL, Paths.PITCH),
    RIDE_HEIGHT(Paths.RIDE_HEIGHT),
    CAMBER(Paths.CAMBER),
    TWIST(Paths.TWIST),
    SHEET(Paths.SHEET);

    // The checker does not know that List.of gives a list that cannot change.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> paths;

    Sensor(String... paths) {
        this.paths = List.of(paths);
    }

    List<String> paths() {
        return paths;
    }
}
