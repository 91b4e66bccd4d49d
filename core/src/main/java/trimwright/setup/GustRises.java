package trimwright.setup;

import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.air.GustShape;
import trimwright.card.GustAct;
import trimwright.card.GustCard;
import trimwright.card.GustWatch;
import trimwright.platform.Platform;
import trimwright.target.TargetBook;
import trimwright.target.TargetLookup;
import trimwright.target.TargetPoint;
import trimwright.water.WaterState;

/**
 * The least rise of the wind, from that the boat is trimmed for, with which a gust passes a limit at a target. The gust fills the
 * whole height at once and nobody moves; both make it worse than most gusts are.
 *
 * @param sheetLoad to pass the largest load of the sheet (m/s); infinite where {@link #MOST} does not; NaN where not known
 * @param heel to pass the boat file's bounds of heel within a second (m/s); infinite also for a boat on her hulls
 */
public record GustRises(double sheetLoad, double heel) {
    /** Nothing known. */
    public static final GustRises NONE = new GustRises(Double.NaN, Double.NaN);

    /** Largest rise that is looked at (m/s); chosen: a gust that fierce is a squall. */
    static final double MOST = 10;

    /** Steps in which rises are tried (m/s); chosen. */
    private static final double STEP = 1;

    /** Halvings of a step: to 0.06 m/s. */
    private static final int HALVINGS = 4;

    /** The rise that passes that limit (m/s). */
    public double of(GustLimit limit) {
        return switch (limit) {
            case SHEET_LOAD -> sheetLoad;
            case HEEL -> heel;
        };
    }

    /**
     * Rises at the target of a leg.
     *
     * @param platform of the book, in that air and water
     * @param wind one of the book's winds (m/s)
     * @param legAngle between the leg and where the wind comes from (rad), in [0, pi]
     * @return {@link #NONE} where there is no target
     */
    public static GustRises of(
            Platform platform, AirState air, WaterState water, TargetBook book, double wind, double legAngle) {
        TargetPoint point = pointFor(book, wind, legAngle);
        if (point == null) {
            return NONE;
        }
        double most = platform.wing().sheet().loadMax();
        // A flow without an answer counts as past the limit: it is not known to be within.
        double sheet = least(rise -> !(GustCard.sheetLoadAtOnce(platform, point, rise) <= most));
        return new GustRises(sheet, heelRise(platform, air, water, point));
    }

    private static double heelRise(Platform platform, AirState air, WaterState water, TargetPoint point) {
        if (!point.isFoiling()) {
            return Double.POSITIVE_INFINITY;
        }
        GustWatch watch = GustWatch.at(platform, air, water, point);
        return watch == null
                ? Double.NaN
                : least(rise -> watch.swing(rise, /* shift= */ 0, GustShape.AT_ONCE, /* act= */ null)
                                .secondsToLimit()
                        < GustAct.IN_TIME);
    }

    private static double least(DoublePredicate isPast) {
        double high = STEP;
        while (!isPast.test(high)) {
            high += STEP;
            if (high > MOST) {
                return Double.POSITIVE_INFINITY;
            }
        }
        double low = high - STEP;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (isPast.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low;
    }

    /** The target at which a leg is sailed: best upwind or downwind where it is tacked or gybed. */
    private static @Nullable TargetPoint pointFor(TargetBook book, double wind, double legAngle) {
        TargetLookup up = book.findUpwind(wind);
        if (up.point() != null && legAngle < up.point().trueWindAngle()) {
            return up.point();
        }
        TargetLookup down = book.findDownwind(wind);
        if (down.point() != null && legAngle > down.point().trueWindAngle()) {
            return down.point();
        }
        return book.find(wind, legAngle).point();
    }
}
