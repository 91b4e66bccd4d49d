package trimwright.dock;

import java.util.Map;
import trimwright.boat.Boat;
import trimwright.track.Paths;

/** Compass, fixes, and where the antenna stands. */
final class Places {
    /** Scatter of fixes at rest that a debrief bears (m): chosen. */
    private static final double SCATTER = 3;

    /** By how much a tape may differ from the boat file (m): chosen. */
    private static final double TAPE = 0.2;

    /** Mean radius (m): of the sphere with the area of the WGS84 ellipsoid. */
    private static final double EARTH = 6_371_007;

    private final Samples samples;
    private final Boat boat;
    private final DockGiven given;

    Places(Samples samples, Boat boat, DockGiven given) {
        this.samples = samples;
        this.boat = boat;
        this.given = given;
    }

    void addTo(Map<DockItem, DockLine> lines) {
        lines.put(DockItem.HEADING, heading());
        lines.put(DockItem.POSITION, position());
        lines.put(
                DockItem.ANTENNA_AFT,
                tape(DockItem.ANTENNA_AFT, given.antennaAft(), boat.antenna().aftOfBow()));
        lines.put(
                DockItem.ANTENNA_STARBOARD,
                tape(
                        DockItem.ANTENNA_STARBOARD,
                        given.antennaStarboard(),
                        boat.antenna().starboard()));
    }

    private DockLine heading() {
        String path = samples.isLogged(Paths.HEADING) ? Paths.HEADING : Paths.HEADING_MAGNETIC;
        Window held = samples.held(path, DockStep.STILL);
        if (!held.isHeard()) {
            return DockLine.of(DockItem.HEADING, DockFinding.DEAD);
        }
        DockLine line = Judge.alive(DockItem.HEADING, held.angle().mean(), Judge.half(held.angle()));
        // A boat on her lines may lie still within a coarse compass's degree.
        return samples.of(path).longestStill() >= Zeros.STILL ? line.noted(DockFinding.FROZEN) : line;
    }

    private DockLine position() {
        Window north = samples.held(Paths.LATITUDE, DockStep.STILL);
        Window east = samples.held(Paths.LONGITUDE, DockStep.STILL);
        if (!north.isHeard() || !east.isHeard()) {
            return DockLine.of(DockItem.POSITION, DockFinding.DEAD);
        }
        double parallel = StrictMath.cos(north.angle().mean());
        double scatter = EARTH * StrictMath.hypot(north.deviation(), parallel * east.deviation());
        DockLine line = Judge.line(DockItem.POSITION, scatter, 0, 0, SCATTER);
        boolean still = samples.of(Paths.LATITUDE).longestStill() >= Zeros.STILL
                && samples.of(Paths.LONGITUDE).longestStill() >= Zeros.STILL;
        return still ? line.with(DockFinding.FROZEN) : line;
    }

    private static DockLine tape(DockItem item, double measured, double inFile) {
        DockLine line = Judge.line(item, measured, 0, inFile, TAPE);
        return Double.isNaN(measured) ? line.with(DockFinding.NOT_GIVEN) : line;
    }
}
