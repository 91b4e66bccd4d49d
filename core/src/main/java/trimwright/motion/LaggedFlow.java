package trimwright.motion;

/**
 * The flow on a wing that its lift has come to follow: true wind with Kuessner's lag, the wing's own motion and setting with
 * Wagner's, both for a wing of aspect ratio six, the published one nearest to a tall wing. Keeps the past, so it is for one wing in one run.
 */
final class LaggedFlow {
    private final LiftLag.Memory[] windX;
    private final LiftLag.Memory[] windY;
    private final LiftLag.Memory[] ownY;
    private final LiftLag.Memory sheet;
    private final LiftLag.Memory camber;
    private final LiftLag.Memory twist;

    /** Begins as if the first flow had lasted for ever. */
    LaggedFlow(double[] windX, double[] windY, double[] ownY, Controls controls) {
        this.windX = memories(LiftLag.KUSSNER_SIX, windX);
        this.windY = memories(LiftLag.KUSSNER_SIX, windY);
        this.ownY = memories(LiftLag.WAGNER_SIX, ownY);
        sheet = LiftLag.WAGNER_SIX.of(controls.sheet());
        camber = LiftLag.WAGNER_SIX.of(controls.camber());
        twist = LiftLag.WAGNER_SIX.of(controls.twist());
    }

    private LaggedFlow(LaggedFlow of) {
        windX = copies(of.windX);
        windY = copies(of.windY);
        ownY = copies(of.ownY);
        sheet = of.sheet.copy();
        camber = of.camber.copy();
        twist = of.twist.copy();
    }

    /** One that goes on from here by itself. */
    LaggedFlow copy() {
        return new LaggedFlow(this);
    }

    private static LiftLag.Memory[] copies(LiftLag.Memory[] of) {
        LiftLag.Memory[] copies = new LiftLag.Memory[of.length];
        for (int i = 0; i < of.length; i++) {
            copies[i] = of[i].copy();
        }
        return copies;
    }

    private static LiftLag.Memory[] memories(LiftLag lag, double[] first) {
        LiftLag.Memory[] memories = new LiftLag.Memory[first.length];
        for (int i = 0; i < first.length; i++) {
            memories[i] = lag.of(first[i]);
        }
        return memories;
    }

    /** True wind ahead that acts on a strip (m/s), after a travel of so many half chords of it. */
    double windX(int strip, double now, double halfChords) {
        return windX[strip].act(now, halfChords);
    }

    double windY(int strip, double now, double halfChords) {
        return windY[strip].act(now, halfChords);
    }

    /** The strip's own motion abeam that acts (m/s). */
    double ownY(int strip, double now, double halfChords) {
        return ownY[strip].act(now, halfChords);
    }

    /** Setting that acts, after a travel of so many half chords of the middle of the wing. */
    Controls setting(Controls now, double halfChords) {
        return new Controls(
                sheet.act(now.sheet(), halfChords),
                camber.act(now.camber(), halfChords),
                twist.act(now.twist(), halfChords),
                now.twistMid(),
                now.portRake(),
                now.starboardRake(),
                now.elevator(),
                now.differential(),
                now.rudder(),
                now.portBoard(),
                now.starboardBoard(),
                now.crew());
    }
}
