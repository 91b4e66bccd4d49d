package trimwright.debrief;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.aim.Aim;
import trimwright.aim.AimFinder;
import trimwright.aim.Gustiness;
import trimwright.platform.Platform;
import trimwright.segment.Leg;
import trimwright.segment.Span;
import trimwright.target.TargetBook;
import trimwright.target.TargetPoint;
import trimwright.wind.Quantity;
import trimwright.wind.WindSpread;

/**
 * How a leg's target was to be sailed in its gusts, below the limits that the target stands at. Losses are told against the target;
 * this says how much of them the gusts asked for.
 *
 * @param leg its place in the day, from 0
 * @param turbulence of the wind on it, as measured (-)
 * @param aim at the mean wind, on a reach at the mean angle
 * @param seconds that the aim costs against the target over the whole leg (s)
 */
record LegAim(int leg, double turbulence, Aim aim, double seconds) {
    /** Those of a boat's legs; only where the target foils, an aim was found, and it is known how gusty it was. */
    static List<LegAim> listOf(Platform platform, TargetBook book, Debrief.Cut cut) {
        List<LegAim> aims = new ArrayList<>();
        List<Leg> legs = cut.pieces().legs();
        for (int i = 0; i < legs.size(); i++) {
            LegAim aim = of(platform, book, cut, i, legs.get(i));
            if (aim != null) {
                aims.add(aim);
            }
        }
        return aims;
    }

    private static @Nullable LegAim of(Platform platform, TargetBook book, Debrief.Cut cut, int index, Leg leg) {
        Span span = leg.span();
        double tws = cut.wind().mean(Quantity.TWS, span.from(), span.to());
        double twa = Math.abs(cut.wind().mean(Quantity.COURSE_TWA, span.from(), span.to()));
        double turbulence = WindSpread.of(cut.wind(), span.from(), span.to());
        TargetPoint point = switch (leg.kind()) {
            case UPWIND -> book.findUpwind(tws).point();
            case DOWNWIND -> book.findDownwind(tws).point();
            case REACHING -> book.find(tws, twa).point();
        };
        if (point == null || !point.isSolved() || !point.isFoiling() || !(turbulence > 0)) {
            return null;
        }
        Gustiness day = Gustiness.of(turbulence, platform.boat().limits());
        Aim aim = new AimFinder(platform, day).aimAt(point);
        double length = span.length() * cut.wind().clock().step();
        return aim == null ? null : new LegAim(index, turbulence, aim, length * (1 - aim.speedShare()));
    }
}
