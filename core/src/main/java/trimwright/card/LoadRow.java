package trimwright.card;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.target.TargetPoint;

/**
 * Loads at one target.
 *
 * @param point the target
 * @param sheet the sheet at its trim
 * @param cambers the same with camber held elsewhere, rising; those with which the boat was balanced
 */
public record LoadRow(TargetPoint point, SheetLoad sheet, List<CamberLoad> cambers) {
    /** A camber must spare at least this share of the hauling work to be called a saving (-); chosen. */
    private static final double WORTH = 0.05;

    /** Speed that a saving may cost nothing by (m/s): below it the search itself is no finer; chosen, 0.01 of a metre a second. */
    private static final double NOTHING = 0.01;

    public LoadRow {
        cambers = List.copyOf(cambers);
    }

    /** Share of the hauling work that a camber spares (-), negative where it takes more. */
    public double spared(CamberLoad other) {
        return sheet.work() > 0 ? 1 - other.sheet().work() / sheet.work() : 0;
    }

    /** The camber that costs the least speed for each joule that it spares the grinders; null where none spares a twentieth. */
    public @Nullable CamberLoad cheapestSaving() {
        CamberLoad best = null;
        double least = Double.POSITIVE_INFINITY;
        for (CamberLoad camber : cambers) {
            double price = Math.max(NOTHING, camber.speedLost()) / spared(camber);
            if (spared(camber) >= WORTH && price < least) {
                best = camber;
                least = price;
            }
        }
        return best;
    }
}
