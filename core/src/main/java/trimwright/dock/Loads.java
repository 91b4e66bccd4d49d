package trimwright.dock;

import java.util.Map;
import trimwright.boat.WingSpec;
import trimwright.compare.Interval;
import trimwright.track.Paths;

/** The sheet's load cell, slack and under a known pull. */
final class Loads {
    /** What a slack cell may show, over the largest load that is allowed (-): chosen. */
    private static final double SLACK = 0.02;

    /** By how much a known pull may be missed, over that pull (-): chosen. */
    private static final double PULL = 0.05;

    private final Samples samples;
    private final WingSpec wing;
    private final DockGiven given;

    Loads(Samples samples, WingSpec wing, DockGiven given) {
        this.samples = samples;
        this.wing = wing;
        this.given = given;
    }

    void addTo(Map<DockItem, DockLine> lines) {
        lines.put(DockItem.LOAD_SLACK, slack());
        lines.put(DockItem.LOAD_PULL, pull());
    }

    private DockLine slack() {
        Window held = samples.held(Paths.SHEET_LOAD, DockStep.STILL);
        return held.isHeard()
                ? Judge.line(
                        DockItem.LOAD_SLACK,
                        held.number(),
                        0,
                        SLACK * wing.sheet().loadMax())
                : DockLine.of(DockItem.LOAD_SLACK, DockFinding.DEAD);
    }

    private DockLine pull() {
        Window held = samples.held(Paths.SHEET_LOAD, DockStep.PULL);
        if (!held.isHeard()) {
            return DockLine.of(DockItem.LOAD_PULL, DockFinding.DEAD);
        }
        Interval read = held.number();
        if (Double.isNaN(given.pull())) {
            return Judge.alive(DockItem.LOAD_PULL, read.mean(), Judge.half(read))
                    .with(DockFinding.NOT_GIVEN);
        }
        DockLine line = Judge.line(DockItem.LOAD_PULL, read, given.pull(), PULL * given.pull());
        Window slack = samples.held(Paths.SHEET_LOAD, DockStep.STILL);
        boolean still = slack.isHeard() && read.mean() == slack.number().mean();
        return still ? line.with(DockFinding.FROZEN) : line;
    }
}
