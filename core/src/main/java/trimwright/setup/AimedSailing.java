package trimwright.setup;

import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;
import trimwright.aim.Aim;
import trimwright.aim.AimFinder;
import trimwright.aim.AimLevels;
import trimwright.aim.Gustiness;
import trimwright.air.AirState;
import trimwright.air.GustShape;
import trimwright.card.GustAct;
import trimwright.card.GustWatch;
import trimwright.card.WingAtOnce;
import trimwright.platform.Platform;
import trimwright.target.TargetBook;
import trimwright.target.TargetLookup;
import trimwright.target.TargetPoint;
import trimwright.water.WaterState;

/**
 * A target sailed at its aim, below its limits by what the day's gusts ask: what that costs, and how often a gust passes a limit all
 * the same. A rise of the wind within the crew's answer fills the whole height at once and nobody moves in it; sheet load by the
 * wing's first moment, heel by the motion model.
 *
 * @param sheetLoadRate how often a gust passes the largest load of the sheet (1/s); NaN where not known
 * @param heelRate how often one passes the boat file's bounds of heel within a second (1/s); 0 for a boat on her hulls
 * @param speedShare speed at the aim over that at the target (-), 1 or less
 */
public record AimedSailing(double sheetLoadRate, double heelRate, double speedShare) {
    /** Nothing known of gusts: sailed at the target. */
    public static final AimedSailing NONE = new AimedSailing(Double.NaN, Double.NaN, 1);

    /** Largest rise that is looked at (m/s); chosen: a gust that fierce is a squall. */
    static final double MOST = 10;

    /** Steps in which rises are tried (m/s); chosen. */
    private static final double STEP = 1;

    /** Halvings of a step: to 0.004 m/s. */
    private static final int HALVINGS = 8;

    /** How often a gust passes that limit (1/s). */
    public double rate(GustLimit limit) {
        return switch (limit) {
            case SHEET_LOAD -> sheetLoadRate;
            case HEEL -> heelRate;
        };
    }

    /**
     * At the target of a leg.
     *
     * @param platform of the book, in that air and water
     * @param wind one of the book's winds (m/s)
     * @param legAngle between the leg and where the wind comes from (rad), in [0, pi]
     * @param day how gusty it is
     * @return {@link #NONE} where there is no target or no aim
     */
    public static AimedSailing of(
            Platform platform,
            AirState air,
            WaterState water,
            TargetBook book,
            double wind,
            double legAngle,
            Gustiness day) {
        TargetPoint point = pointFor(book, wind, legAngle);
        Aim aim = point == null ? null : new AimFinder(platform, day).aimAt(point);
        if (point == null || aim == null) {
            return NONE;
        }
        double most = platform.wing().sheet().loadMax();
        double sheet = least(rise -> {
            WingAtOnce held = WingAtOnce.of(platform, aim.state(), point.trueWindSpeed() + rise, 0);
            // A flow without an answer counts as past the limit: it is not known to be within.
            return held == null || !(held.sheetLoad() <= most);
        });
        double heel = heelRise(platform, air, water, aim);
        AimLevels levels = aim.levels();
        return new AimedSailing(
                levels.loadGusts().ratePassing(sheet), levels.momentGusts().ratePassing(heel), aim.speedShare());
    }

    private static double heelRise(Platform platform, AirState air, WaterState water, Aim aim) {
        if (!aim.point().isFoiling()) {
            return Double.POSITIVE_INFINITY;
        }
        GustWatch watch = aim.isBelowTarget()
                ? GustWatch.at(platform, air, water, aim.point(), aim.state())
                : GustWatch.at(platform, air, water, aim.point());
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
