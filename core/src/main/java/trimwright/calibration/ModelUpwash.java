package trimwright.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealVector;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WindSensor;
import trimwright.boat.WingSpec;
import trimwright.units.Angles;
import trimwright.wing.AirVelocity;
import trimwright.wing.PlacedWing;
import trimwright.wing.StripAir;
import trimwright.wing.Wing;
import trimwright.wing.WingSetting;
import trimwright.wing.WingSolved;

/**
 * Upwash of the boat's wing at the place of its sensor, by the lifting-line model with its image in the sea, fitted as a
 * plane over angle of attack, camber and twist about the trims that were sailed. The air is taken as the same from foot to
 * head, the twist as linear, the section in closed form; what hull and crew do to the air is left out. Within half a chord
 * of the head the line of vortices serves only roughly: the size is solved for, the model gives the shape.
 */
final class ModelUpwash {
    private static final int STRIPS = 16;

    /** So many trims of the day are looked at (chosen), each with a neighbour to either side in every direction. */
    private static final int TRIMS = 12;

    private static final double NEIGHBOUR = Math.toRadians(2);

    private static final int UNKNOWNS = 3;

    /** Least typical upwash that can be told from none (rad), chosen. */
    private static final double LEAST = Math.toRadians(0.1);

    private final WindSensor sensor;
    private final WingSpec spec;
    private final Wing wing;
    private final List<double[]> rows = new ArrayList<>();
    private final List<Double> turned = new ArrayList<>();

    private ModelUpwash(Boat boat, WingSpec spec) {
        sensor = boat.windSensor();
        this.spec = spec;
        wing = Wing.of(spec, STRIPS);
    }

    /** By the model where the blocks tell the wing's trim, else by the wind alone. */
    static UpwashBasis of(List<Block> blocks, Boat boat, WingSpec spec) {
        List<Block> trimmed = blocks.stream().filter(ModelUpwash::isTrimmed).toList();
        ModelUpwash model = new ModelUpwash(boat, spec);
        int step = Math.max(1, trimmed.size() / TRIMS);
        for (int i = 0; i < trimmed.size(); i += step) {
            model.about(trimmed.get(i));
        }
        return model.fit(trimmed, byWind(blocks));
    }

    static UpwashBasis byWind(List<Block> blocks) {
        return new UpwashBasis.OfWindAlone(
                median(blocks.stream().mapToDouble(b -> b.felt().speed()).toArray()));
    }

    private static boolean isTrimmed(Block block) {
        Block.Trim trim = block.trim();
        return !Double.isNaN(trim.camber() + trim.sheet() + trim.twist());
    }

    private void about(Block block) {
        double foot = spec.footHeight() + block.lies().rideHeight();
        PlacedWing placed = wing.placedAt(block.lies().roll(), foot);
        for (int axis = -1; axis < UNKNOWNS; axis++) {
            for (int way = -1; way <= 1; way += 2) {
                double[] moved = new double[UNKNOWNS];
                if (axis >= 0) {
                    moved[axis] = way * NEIGHBOUR;
                }
                solve(placed, block, moved);
            }
        }
    }

    private void solve(PlacedWing placed, Block block, double[] moved) {
        Block.Felt felt = block.felt();
        double angle = felt.angle() + moved[0];
        double roll = block.lies().roll();
        WingSetting setting = new WingSetting(
                block.trim().sheet(),
                block.trim().camber() + moved[1],
                block.trim().twist() + moved[2],
                0.5);
        StripAir air = StripAir.uniform(STRIPS, felt.speed(), angle, roll, AirState.STANDARD);
        if (!(placed.solve(air, setting) instanceof WingSolved solved)) {
            return;
        }
        AirVelocity added = placed.velocityAt(solved, sensor.x() - spec.x(), 0, -(sensor.height() - spec.footHeight()));
        double free = StrictMath.atan2(-air.y(0), -air.x(0));
        double bent = StrictMath.atan2(-air.y(0) - added.y(), -air.x(0) - added.x());
        rows.add(new double[] {angle - setting.sheet(), setting.camber(), setting.twist()});
        turned.add(Angles.difference(bent, free));
    }

    private UpwashBasis fit(List<Block> trimmed, UpwashBasis otherwise) {
        if (rows.size() <= 2 * UNKNOWNS) {
            return otherwise;
        }
        Array2DRowRealMatrix design = new Array2DRowRealMatrix(rows.toArray(double[][]::new));
        RealVector right = new ArrayRealVector(
                turned.stream().mapToDouble(Double::doubleValue).toArray());
        RealVector slopes = new QRDecomposition(design).getSolver().solve(right);
        double misfit = design.operate(slopes).subtract(right).getNorm() / Math.sqrt(rows.size());
        double typical = median(trimmed.stream()
                .mapToDouble(b -> b.felt().side()
                        * (slopes.getEntry(0) * (b.felt().angle() - b.trim().sheet())
                                + slopes.getEntry(1) * b.trim().camber()
                                + slopes.getEntry(2) * b.trim().twist()))
                .toArray());
        return Math.abs(typical) < LEAST
                ? otherwise
                : new UpwashBasis.OfModel(typical, slopes.getEntry(0), slopes.getEntry(1), slopes.getEntry(2), misfit);
    }

    private static double median(double[] values) {
        Arrays.sort(values);
        return values.length == 0 ? 1 : values[values.length / 2];
    }
}
