package trimwright.motion;

import trimwright.foil.FoilLoad;

/**
 * Air drawn down a strut that pierces the surface, with its history: it comes when the lift has been over that of inception for a
 * moment, leaves a quarter of the lift slope, and goes only when far less lift is asked or the boat is far slower. Source:
 * VENTILATION in docs/sources.md for the quarter and the two-fold state; times and bounds of going are assumed there too. The tip of
 * a foil below a ventilated shaft keeps its lift.
 */
final class StrutAir {
    /** Time over the lift of inception until air comes down (s): middle of 0.1 to 0.2. */
    private static final double COMES_AFTER = 0.15;

    /** Share of the lift slope that a ventilated strut keeps (-). */
    static final double LEFT = 0.25;

    /** Time in which the lift goes and comes back (s): chosen, some chords of travel. */
    private static final double CHANGE = 0.1;

    /** Lift asked over that of inception (-), and speed over that at which it came (-), below either of which air goes: assumed. */
    private static final double LIFT_GOES = 0.5;

    private static final double SPEED_GOES = 0.6;

    private double over;
    private boolean isIn;
    private double speedAtInception;
    private double kept = 1;

    /** One that goes on from here by itself. */
    StrutAir copy() {
        StrutAir other = new StrutAir();
        other.over = over;
        other.isIn = isIn;
        other.speedAtInception = speedAtInception;
        other.kept = kept;
        return other;
    }

    /** No air. */
    void forget() {
        over = 0;
        isIn = false;
        kept = 1;
    }

    /** Share of the lift slope that is left (-). */
    double kept() {
        return kept;
    }

    /** Whether air has come down. */
    boolean isIn() {
        return isIn;
    }

    /**
     * Goes on by a step.
     *
     * @param load of the strut with what {@link #kept} left
     * @param speed of the water past it (m/s)
     * @param dt length of the step (s)
     */
    void note(FoilLoad load, double speed, double dt) {
        double asked = load.ventilationRatio() / kept;
        if (isIn) {
            isIn = asked > LIFT_GOES && speed > SPEED_GOES * speedAtInception;
            over = 0;
        } else {
            over = asked > 1 ? over + dt : 0;
            isIn = over > COMES_AFTER;
            speedAtInception = speed;
        }
        double change = (1 - LEFT) * dt / CHANGE;
        kept = isIn ? Math.max(LEFT, kept - change) : Math.min(1, kept + change);
    }
}
