package trimwright.power;

import java.util.ArrayList;
import java.util.List;
import trimwright.boat.Handling;
import trimwright.boat.SheetTackle;

/**
 * How fast the wing comes in against a load, with what oil leaves to the sheet on straights and in a burst.
 *
 * @param load at the wing (N)
 * @param keptUp with the power that is kept up for long, oil served first (rad/s)
 * @param burst mean over {@link #BURST} all out from rest, oil waiting (rad/s)
 */
public record HaulSpeed(double load, double keptUp, double burst) {
    /** Length of a burst (s): as that of a published figure for grinders. */
    public static final double BURST = 5;

    /** Steps of load of the list (N). */
    private static final double STEP = 1000;

    /** One a thousand newtons up to the largest load that the boat file allows. */
    public static List<HaulSpeed> listOf(Handling handling, SheetTackle tackle, PowerAccount account) {
        Hauling hauling = Hauling.of(tackle, handling);
        CriticalPower one = CriticalPower.of(handling.grinders()).atFitness(account.fitness());
        double most = handling.grinders().count() * one.most(BURST);
        List<HaulSpeed> speeds = new ArrayList<>();
        for (double load = STEP; load <= tackle.loadMax(); load += STEP) {
            speeds.add(new HaulSpeed(load, hauling.rate(load, account.leftForSheet()), hauling.rate(load, most)));
        }
        return speeds;
    }
}
