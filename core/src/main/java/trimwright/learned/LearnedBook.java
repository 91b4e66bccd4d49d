package trimwright.learned;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.target.SpeedSlopes;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetLimit;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.units.Units;

/**
 * Makes of the model's book and what was learnt a second one: speeds on the foils are those learnt, and the apparent wind follows
 * them. Angles, trim, bands, loads and limits stay the model's; so do points on the hulls. No target rises where water or a
 * rule already holds the model's back, nor above a speed limit.
 */
public final class LearnedBook {
    /** Limits that more speed would break. */
    private static final Set<TargetLimit> OF_SPEED = EnumSet.of(
            TargetLimit.CAVITATION_MAIN,
            TargetLimit.CAVITATION_ELEVATOR,
            TargetLimit.VENTILATION,
            TargetLimit.SPEED_LIMIT);

    /** Half-widths of the differences that make slopes: half a cell of what is learnt. */
    private static final double WIND_STEP = Units.fromKnots(1);

    private static final double ANGLE_STEP = Units.fromDegrees(2.5);

    private final LearnedTargets learned;
    private final double fastest;

    private LearnedBook(LearnedTargets learned, double fastest) {
        this.learned = learned;
        this.fastest = fastest;
    }

    /**
     * The second book.
     *
     * @param fastest speed limit of class or maker (m/s), infinite where there is none
     */
    public static TargetBook of(TargetBook model, LearnedTargets learned, double fastest) {
        LearnedBook made = new LearnedBook(learned, fastest);
        return new TargetBook(
                model.boat(),
                model.wing(),
                model.modelVersion(),
                model.grid(),
                model.points().stream().map(made::point).toList());
    }

    private TargetPoint point(TargetPoint point) {
        Target target = point.target();
        if (target == null || !point.isFoiling()) {
            return point;
        }
        double wind = point.trueWindSpeed();
        double angle = point.trueWindAngle();
        double ratio = StrictMath.exp(learned.logRatio(wind, angle));
        boolean held = ratio > 1 && target.limits().stream().anyMatch(OF_SPEED::contains);
        if (held || ratio == 1) {
            return point;
        }
        double speed = target.boatSpeed() * ratio;
        if (ratio > 1 && speed > fastest) {
            speed = Math.max(fastest, target.boatSpeed());
            return TargetPoint.solved(point.mode(), point.branch(), wind, angle, faster(target, point, speed))
                    .withSlopes(point.slopes());
        }
        return TargetPoint.solved(point.mode(), point.branch(), wind, angle, faster(target, point, speed))
                .withSlopes(slopes(point, target, ratio));
    }

    private static Target faster(Target target, TargetPoint point, double speed) {
        double wind = point.trueWindSpeed();
        double angle = point.trueWindAngle();
        double turned = apparentAngle(wind, angle, speed) - apparentAngle(wind, angle, target.boatSpeed());
        double felt = apparentSpeed(wind, angle, speed) / apparentSpeed(wind, angle, target.boatSpeed());
        return new Target(
                speed,
                target.velocityMadeGood() * speed / target.boatSpeed(),
                target.apparentWindAngle() + turned,
                target.apparentWindSpeed() * felt,
                target.trim(),
                target.bands(),
                target.attitude(),
                target.loads(),
                target.limits(),
                target.caveats());
    }

    /** From the course (rad): the leeway, and with it the way to the bow, stays. */
    private static double apparentAngle(double wind, double angle, double speed) {
        return StrictMath.atan2(wind * StrictMath.sin(angle), wind * StrictMath.cos(angle) + speed);
    }

    private static double apparentSpeed(double wind, double angle, double speed) {
        return StrictMath.hypot(wind * StrictMath.sin(angle), wind * StrictMath.cos(angle) + speed);
    }

    private @Nullable SpeedSlopes slopes(TargetPoint point, Target target, double ratio) {
        SpeedSlopes model = point.slopes();
        if (model == null) {
            return null;
        }
        double wind = point.trueWindSpeed();
        double angle = point.trueWindAngle();
        double byWind = (learned.logRatio(wind + WIND_STEP, angle) - learned.logRatio(wind - WIND_STEP, angle))
                / (2 * WIND_STEP);
        double byAngle = (learned.logRatio(wind, angle + ANGLE_STEP) - learned.logRatio(wind, angle - ANGLE_STEP))
                / (2 * ANGLE_STEP);
        boolean free = point.mode() != TargetMode.ANGLE;
        double goal = free ? target.velocityMadeGood() : target.boatSpeed();
        return new SpeedSlopes(
                ratio * (model.byWind() + goal * byWind), free ? 0 : ratio * (model.byAngle() + goal * byAngle));
    }
}
