package trimwright.dock;

import java.util.Map;
import trimwright.compare.Interval;
import trimwright.track.Paths;
import trimwright.units.Angles;

/** What must read zero while nothing moves, and heel's answer to the crew on the starboard hull. */
final class Zeros {
    /** By how much a zero may be off (rad): chosen. */
    private static final double TOLERANCE = Math.toRadians(0.5);

    /** A restless sensor that says the same for as long is frozen (s): chosen, as for whole logs. */
    static final double STILL = 120;

    private final Samples samples;
    private final DockGiven given;
    private final Flaps flaps;

    Zeros(Samples samples, DockGiven given, Flaps flaps) {
        this.samples = samples;
        this.given = given;
        this.flaps = flaps;
    }

    void addTo(Map<DockItem, DockLine> lines) {
        lines.put(DockItem.HEEL_ZERO, attitude(DockItem.HEEL_ZERO, Paths.ROLL, given.heel()));
        lines.put(DockItem.PITCH_ZERO, attitude(DockItem.PITCH_ZERO, Paths.PITCH, given.pitch()));
        lines.put(DockItem.HEEL_SIDE, heelSide());
        lines.put(DockItem.SHEET_ZERO, gauge(DockItem.SHEET_ZERO, Paths.SHEET));
        lines.put(DockItem.FLAP_FOOT_ZERO, gauge(DockItem.FLAP_FOOT_ZERO, Paths.CAMBER));
        lines.put(DockItem.FLAP_MIDDLE_ZERO, middle());
        lines.put(DockItem.FLAP_HEAD_ZERO, head());
    }

    private DockLine attitude(DockItem item, String path, double known) {
        Window held = samples.held(path, DockStep.STILL);
        if (!held.isHeard()) {
            return DockLine.of(item, DockFinding.DEAD);
        }
        DockLine line = Judge.line(item, held.angle(), Double.isNaN(known) ? 0 : known, TOLERANCE);
        // Maybe only coarse: whether heel follows the crew says more.
        return samples.of(path).longestStill() >= STILL ? line.noted(DockFinding.FROZEN) : line;
    }

    /** She must list to starboard; by how much hangs on the boat's lines, which the boat file does not have. */
    private DockLine heelSide() {
        Window still = samples.held(Paths.ROLL, DockStep.STILL);
        Window over = samples.held(Paths.ROLL, DockStep.CREW_STARBOARD);
        if (!still.isHeard() || !over.isHeard()) {
            return DockLine.of(DockItem.HEEL_SIDE, DockFinding.DEAD);
        }
        Interval before = still.angle();
        Interval then = over.angle();
        double listed = Angles.difference(then.mean(), before.mean());
        double half = StrictMath.hypot(Judge.half(before), Judge.half(then));
        DockLine line = Judge.alive(DockItem.HEEL_SIDE, listed, half);
        if (samples.of(Paths.ROLL).longestStill() >= STILL) {
            return line.with(DockFinding.FROZEN);
        }
        return listed - half > 0 ? line : line.with(listed + half < 0 ? DockFinding.SIGN : DockFinding.UNSURE);
    }

    private DockLine gauge(DockItem item, String path) {
        Window held = samples.held(path, DockStep.STILL);
        if (!held.isHeard()) {
            return DockLine.of(item, DockFinding.DEAD);
        }
        DockLine line = Judge.line(item, held.angle(), 0, TOLERANCE);
        DockFinding swung = flaps.gauge(path);
        // A gauge that shows another control, or none, has no zero of its own.
        return swung == DockFinding.SWAPPED || swung == DockFinding.FROZEN || swung == DockFinding.HARDLY_MOVES
                ? line.with(DockFinding.CANNOT_TELL)
                : line;
    }

    private DockLine middle() {
        if (!samples.isLogged(Paths.FLAP_MIDDLE)) {
            return DockLine.of(DockItem.FLAP_MIDDLE_ZERO, DockFinding.NOT_LOGGED);
        }
        Window held = samples.held(Paths.FLAP_MIDDLE, DockStep.STILL);
        return held.isHeard()
                ? Judge.line(DockItem.FLAP_MIDDLE_ZERO, held.angle(), 0, TOLERANCE)
                : DockLine.of(DockItem.FLAP_MIDDLE_ZERO, DockFinding.DEAD);
    }

    /** The flap at the head is the foot's less the twist. */
    private DockLine head() {
        DockLine foot = gauge(DockItem.FLAP_FOOT_ZERO, Paths.CAMBER);
        DockLine twist = gauge(DockItem.FLAP_HEAD_ZERO, Paths.TWIST);
        Window head = samples.held(Paths.CAMBER, DockStep.STILL).less(samples.held(Paths.TWIST, DockStep.STILL), 1);
        if (!head.isHeard()) {
            return DockLine.of(DockItem.FLAP_HEAD_ZERO, DockFinding.DEAD);
        }
        DockLine line = Judge.line(DockItem.FLAP_HEAD_ZERO, head.angle(), 0, TOLERANCE);
        boolean sound = foot.finding() != DockFinding.CANNOT_TELL && twist.finding() != DockFinding.CANNOT_TELL;
        // With one of the two signs swapped the sum would be read in place of the difference.
        boolean signs = flaps.gauge(Paths.CAMBER) == DockFinding.SIGN ^ flaps.gauge(Paths.TWIST) == DockFinding.SIGN;
        return sound && !signs ? line : line.with(DockFinding.CANNOT_TELL);
    }
}
