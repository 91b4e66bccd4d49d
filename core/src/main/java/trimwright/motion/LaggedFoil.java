package trimwright.motion;

import trimwright.foil.Flow;

/**
 * The flow on a foil or strut in the water that its lift has come to follow: its own motion and setting with Wagner's lag, by
 * Jones's function for aspect ratio six, the published one nearest to these. Water's own motion counts as the foil's. Keeps the past,
 * so it is for one element in one run.
 */
final class LaggedFoil {
    private final double chord;
    private LiftLag.Memory aside;
    private LiftLag.Memory down;
    private LiftLag.Memory angle;
    private boolean begun;
    private double angleNow;

    /** @param chord of the element (m) */
    LaggedFoil(double chord) {
        this.chord = chord;
        aside = LiftLag.WAGNER_SIX.of(0);
        down = LiftLag.WAGNER_SIX.of(0);
        angle = LiftLag.WAGNER_SIX.of(0);
    }

    /** One that goes on from here by itself. */
    LaggedFoil copy() {
        LaggedFoil other = new LaggedFoil(chord);
        other.aside = aside.copy();
        other.down = down.copy();
        other.angle = angle.copy();
        other.begun = begun;
        other.angleNow = angleNow;
        return other;
    }

    /** Begins anew: the next flow counts as if it had lasted for ever. */
    void forget() {
        begun = false;
    }

    /** The flow that acts, with {@link #angle} beside it, when this is the flow and the setting (rad) for a step (s). */
    Flow act(Flow now, double setting, double dt) {
        if (!begun) {
            aside = LiftLag.WAGNER_SIX.of(now.v());
            down = LiftLag.WAGNER_SIX.of(now.w());
            angle = LiftLag.WAGNER_SIX.of(setting);
            begun = true;
        }
        double halfChords = 2 * Math.sqrt(now.u() * now.u() + now.v() * now.v()) * dt / chord;
        angleNow = angle.act(setting, halfChords);
        return new Flow(now.u(), aside.act(now.v(), halfChords), down.act(now.w(), halfChords), now.depth());
    }

    /** Setting that acts with the last flow (rad). */
    double angle() {
        return angleNow;
    }
}
