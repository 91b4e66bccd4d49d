package trimwright.setup;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import trimwright.target.Attitude;
import trimwright.target.Band;
import trimwright.target.Branch;
import trimwright.target.Loads;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetGrid;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.target.TrimBands;
import trimwright.target.TrimSetting;

/** A book of a made-up boat whose speed at every angle is a function of the wind: best upwind at 45, downwind at 135 degrees. */
final class HandMadeBook {
    static final double UP = Math.PI / 4;
    static final double DOWN = 3 * Math.PI / 4;

    private static final double STEP = 0.5;

    private HandMadeBook() {}

    /**
     * Winds of 2 to 20 m/s.
     *
     * @param onHulls speed (m/s) over wind (m/s)
     * @param onFoils the same on the foils
     * @param staysUp least wind with a foiling state (m/s)
     * @param takesOff least wind in which she takes off by herself (m/s)
     */
    static TargetBook of(DoubleUnaryOperator onHulls, DoubleUnaryOperator onFoils, double staysUp, double takesOff) {
        List<Double> winds = new ArrayList<>();
        List<Double> angles = new ArrayList<>();
        for (double wind = 2; wind <= 20; wind += STEP) {
            winds.add(wind);
        }
        for (int degrees = 30; degrees <= 170; degrees += 5) {
            angles.add(Math.toRadians(degrees));
        }
        List<TargetPoint> points = new ArrayList<>();
        for (double wind : winds) {
            add(points, Branch.DISPLACEMENT, wind, angles, onHulls.applyAsDouble(wind), Set.of());
            if (wind >= staysUp) {
                Set<TargetCaveat> caveats = wind < takesOff
                        ? Set.of(TargetCaveat.NOT_REACHED_BY_ITSELF)
                        : EnumSet.noneOf(TargetCaveat.class);
                add(points, Branch.FOILING, wind, angles, onFoils.applyAsDouble(wind), caveats);
            }
        }
        return new TargetBook("hand", "made", "test", new TargetGrid(winds, angles), points);
    }

    private static void add(
            List<TargetPoint> points,
            Branch branch,
            double wind,
            List<Double> angles,
            double speed,
            Set<TargetCaveat> caveats) {
        for (double angle : angles) {
            points.add(TargetPoint.solved(TargetMode.ANGLE, branch, wind, angle, target(speed, angle, caveats)));
        }
        points.add(TargetPoint.solved(TargetMode.UPWIND, branch, wind, UP, target(speed, UP, caveats)));
        points.add(TargetPoint.solved(TargetMode.DOWNWIND, branch, wind, DOWN, target(speed, DOWN, caveats)));
    }

    private static Target target(double speed, double angle, Set<TargetCaveat> caveats) {
        Band none = new Band(0, 0);
        return new Target(
                speed,
                speed * Math.abs(Math.cos(angle)),
                0.3,
                15,
                new TrimSetting(0, 0, 0.5, 0),
                new TrimBands(none, none, none),
                new Attitude(0, 1, 0, 0, 0, 0, 0, 0),
                new Loads(0, 0, 0, 1, 0, 0),
                Set.of(),
                caveats);
    }
}
