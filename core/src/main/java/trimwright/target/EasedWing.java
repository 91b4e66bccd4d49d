package trimwright.target;

import java.util.List;
import java.util.Map;
import trimwright.boat.TrimRange;
import trimwright.platform.Balanced;
import trimwright.platform.Balancer;
import trimwright.platform.Equilibrium;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;

/**
 * The boat on its hulls with the wing eased as far as it goes, flat and in the middle of its crew: what remains where no
 * trim keeps the air on the wing. No target, since a stalled wing's flow is not one: it only tells that the boat stays
 * on its hulls.
 */
final class EasedWing {
    /** With the sheet at its end, heel is what roll settles. */
    private static final List<Variable> SETTLED = List.of(
            Variable.BOAT_SPEED, Variable.LEEWAY, Variable.RUDDER, Variable.RIDE_HEIGHT, Variable.PITCH, Variable.HEEL);

    /** Speed over wind that the search for the balance begins with; chosen. */
    private static final double SLOW = 0.5;

    private EasedWing() {}

    /** Whether the boat sails steadily on its hulls at that angle (rad) with the wing so, and the wing is stalled in it. */
    static boolean isStalledOnHulls(Task task, double angle) {
        Platform platform = task.platform();
        double wind = task.conditions().wind().referenceSpeed();
        TrimRange trim = platform.wing().trim();
        SailingState guess = FirstGuess.onHulls(platform, wind, angle)
                .with(Variable.BOAT_SPEED, SLOW * wind)
                .with(Variable.SHEET, trim.sheetMax())
                .with(Variable.CAMBER, 0)
                .with(Variable.TWIST, 0)
                .with(Variable.CREW_PLACE, 0);
        for (Map.Entry<Variable, Double> held : task.held().entrySet()) {
            guess = guess.with(held.getKey(), held.getValue());
        }
        Equilibrium found = new Balancer(platform, task.conditions(), SETTLED).balance(guess);
        return found instanceof Balanced balanced
                && balanced.balance().water().buoyancy() > WaterFunctions.HULL_SHARE * platform.weight()
                && balanced.balance().wing().flow().stallMargin() < 0;
    }
}
