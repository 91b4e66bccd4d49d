package trimwright.power;

import trimwright.boat.Handling;
import trimwright.boat.SheetTackle;

/**
 * Hauling the sheet: arms against a load, through the tackle, no faster than the rope can run.
 *
 * @param tackle lever, purchase, efficiency
 * @param ropeSpeedMost at the wing (m/s)
 */
public record Hauling(SheetTackle tackle, double ropeSpeedMost) {
    public static Hauling of(SheetTackle tackle, Handling handling) {
        return new Hauling(tackle, handling.rates().sheetHaul());
    }

    /** How fast the wing comes in (rad/s) against a load at the wing (N) with a power of all grinders (W). */
    public double rate(double load, double power) {
        double byPower = load > 0 ? Math.max(0, power) * tackle.efficiency() / load : Double.POSITIVE_INFINITY;
        return Math.min(ropeSpeedMost, byPower) / tackle.lever();
    }

    /** Work of the grinders (J) for a work at the wing (J). */
    public double workOfGrinders(double workAtWing) {
        return workAtWing / tackle.efficiency();
    }

    /** Seconds for an angle (rad) that takes a work at the wing (J), with a power of all grinders (W). */
    public double seconds(double angle, double workAtWing, double power) {
        return Math.max(leastSeconds(angle), workOfGrinders(Math.max(0, workAtWing)) / power);
    }

    /** Seconds for the same, all out from rest. */
    public double secondsAllOut(double angle, double workAtWing, CriticalPower one, int grinders) {
        double each = workOfGrinders(Math.max(0, workAtWing)) / grinders;
        return Math.max(leastSeconds(angle), one.secondsFor(each));
    }

    /** Seconds that the rope needs without any load. */
    private double leastSeconds(double angle) {
        return tackle.lever() * angle / ropeSpeedMost;
    }
}
