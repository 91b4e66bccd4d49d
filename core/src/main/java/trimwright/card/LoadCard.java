package trimwright.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Handling;
import trimwright.platform.Balance;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.power.PowerAccount;
import trimwright.target.TargetFinder;
import trimwright.target.TargetPoint;

/**
 * Sheet loads over wind and camber, and the grinders' account of a lap. Leaves out friction that grows with load, the sheet's
 * stretch, and hauls beyond those that the boat file counts.
 */
public final class LoadCard {
    private final Platform platform;
    private final Handling handling;
    private final TargetFinder finder;

    /** @param handling of the platform's boat */
    public LoadCard(Platform platform, Handling handling) {
        this.platform = platform;
        this.handling = handling;
        finder = new TargetFinder(platform, Map.of());
    }

    /**
     * Loads at a solved target, or null where the wing's flow has no answer beside it.
     *
     * @param cambers to compare with (rad), rising; those beyond the wing's range are left out
     */
    public @Nullable LoadRow rowOf(TargetPoint point, List<Double> cambers) {
        SailingState state = point.state();
        double wind = point.trueWindSpeed();
        SheetLoad sheet = SheetLoad.of(platform, handling, state, wind);
        if (sheet == null) {
            return null;
        }
        Balance free = finder.bestNear(point.branch(), wind, state, Map.of());
        List<CamberLoad> found = new ArrayList<>();
        if (free != null) {
            for (double camber : cambers) {
                CamberLoad load = camber <= platform.wing().trim().camberMax() ? at(point, free, camber) : null;
                if (load != null) {
                    found.add(load);
                }
            }
        }
        return new LoadRow(point, sheet, found);
    }

    private @Nullable CamberLoad at(TargetPoint point, Balance free, double camber) {
        double wind = point.trueWindSpeed();
        Balance held = finder.bestNear(point.branch(), wind, free.state(), Map.of(Variable.CAMBER, camber));
        SheetLoad sheet = held == null ? null : SheetLoad.of(platform, handling, held.state(), wind);
        if (held == null || sheet == null) {
            return null;
        }
        double speed = held.state().get(Variable.BOAT_SPEED);
        return new CamberLoad(camber, speed, Math.max(0, free.state().get(Variable.BOAT_SPEED) - speed), sheet);
    }

    /**
     * The account of a lap that is half beat and half run.
     *
     * @param rows of one wind, at least one
     * @param lap its length (s)
     * @param fitness share of full fitness (-)
     */
    public PowerAccount account(List<LoadRow> rows, double lap, double fitness) {
        double moment = rows.stream()
                .mapToDouble(row -> row.sheet().meanMoment())
                .average()
                .orElseThrow(() -> new IllegalArgumentException("an account needs a row"));
        return PowerAccount.of(handling, platform.wing().sheet().efficiency(), moment, lap, fitness);
    }
}
