package trimwright.call;

import trimwright.boat.Limits;
import trimwright.live.LiveFigures;
import trimwright.live.LiveState;

/** Limits, told from the figures of the instant: no averages, no waiting. */
public final class Tones {
    /** Heel this far beyond the windward limit (rad): chosen, more than a crew swings about a target that lies at it. */
    private static final double BEYOND_HEEL = Math.toRadians(2);

    /** Heel this near to its leeward limit (rad), and share of the speed limit from which it is near (-): chosen. */
    private static final double NEAR_HEEL = Math.toRadians(0.5);

    private static final double NEAR = 0.98;

    private final Limits limits;

    public Tones(Limits limits) {
        this.limits = limits;
    }

    /** The tone of this instant. The upper end of the moment's interval counts. Off the foils and in turns heel is no limit. */
    public Tone of(LiveFigures figures) {
        Double speedMost = limits.boatSpeedMax();
        if (speedMost != null && figures.motion().speed() >= NEAR * speedMost) {
            return Tone.LIMIT;
        }
        LiveFigures.Load load = figures.load();
        if (load.moment().high() >= load.limit()) {
            return Tone.LIMIT;
        }
        if (figures.state() != LiveState.ON_FOILS) {
            return Tone.NONE;
        }
        double heel = figures.motion().heel();
        if (heel <= limits.heelMin() + NEAR_HEEL) {
            return Tone.LIMIT;
        }
        // Targets lie at the windward limit: beyond it the moment is wanting.
        return heel >= limits.heelMax() + BEYOND_HEEL ? Tone.WINDWARD : Tone.NONE;
    }
}
