package trimwright.calibration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import trimwright.air.ApparentWind;
import trimwright.dock.DockOffset;
import trimwright.units.Angles;

/**
 * One boat's blocks as functions of what is not known: the unknowns, then what has to be carried along (current, how
 * alike the two tacks are trimmed, the trim on each point of sail).
 */
final class BoatModel {
    /** What a series of residuals is of. */
    enum Kind {
        /** Components of the true wind; common to all boats. */
        WIND_NORTH,
        WIND_EAST,
        /** Way through the water across and along the keel. */
        ACROSS,
        ALONG,
        CAMBER,
        SHEET,
        TWIST
    }

    /** How the trims of two points of sail stand among what is carried along: a mean and a slope over the wind for each. */
    private static final int TRIM = 4;

    private static final int UNKNOWNS = Unknown.values().length;
    private static final int CURRENT = UNKNOWNS;
    private static final int ALIKE = CURRENT + 2;
    private static final int SHAPE = ALIKE + 6;
    private static final int TRIMS = SHAPE + 1;
    static final int SIZE = TRIMS + 3 * TRIM;

    /** Current (m/s), how alike people trim on both tacks (rad), trims (rad): standard deviations beforehand, chosen. */
    private static final double CURRENT_BEFORE = 0.5;

    private static final double ALIKE_BEFORE = Math.toRadians(0.3);

    /** By how much upwash may go otherwise between points of sail than its form has it (rad): chosen. */
    private static final double SHAPE_BEFORE = Math.toRadians(0.5);

    private static final double TRIM_BEFORE = Math.toRadians(60);

    private static final double BELIEVED = 1e-4;

    final List<Block> blocks;
    final UpwashBasis basis;
    final double leeway;
    private final boolean turnsWithWing;
    private final double[] windOver;
    private final double[] mean = new double[SIZE];
    private final double[] before = new double[SIZE];
    private final Map<Kind, int[]> rows = new EnumMap<>(Kind.class);

    BoatModel(List<Block> blocks, UpwashBasis basis, boolean turnsWithWing, List<DockOffset> dock) {
        this.blocks = List.copyOf(blocks);
        this.basis = basis;
        this.turnsWithWing = turnsWithWing;
        double[] pressures = blocks.stream().mapToDouble(BoatModel::pressure).toArray();
        Arrays.sort(pressures);
        leeway = pressures[pressures.length / 2];
        windOver = windOver();
        chooseRows();
        knownBefore(dock);
    }

    private void knownBefore(List<DockOffset> dock) {
        for (Unknown unknown : Unknown.values()) {
            before[unknown.ordinal()] = unknown.before();
        }
        mean[Unknown.UPWASH.ordinal()] = basis.typical();
        if (!has(Kind.ALONG)) {
            // With no second speed both wind and way could be any multiple of what is read: the log is believed.
            before[Unknown.BOAT_SPEED.ordinal()] = BELIEVED;
        }
        Arrays.fill(before, CURRENT, ALIKE, CURRENT_BEFORE);
        Arrays.fill(before, ALIKE, SHAPE, ALIKE_BEFORE);
        before[SHAPE] = SHAPE_BEFORE;
        Arrays.fill(before, TRIMS, SIZE, TRIM_BEFORE);
        for (DockOffset offset : dock) {
            switch (offset.quantity()) {
                case CAMBER -> known(Unknown.CAMBER, offset);
                case SHEET -> known(Unknown.SHEET, offset);
                case TWIST -> known(Unknown.TWIST, offset);
                case WIND_ANGLE -> {
                    // Of a sensor fixed to the boat the check tells the offset by the sheet gauge: not by itself.
                    if (turnsWithWing) {
                        known(Unknown.WIND_ANGLE, offset);
                    }
                }
                case ROLL, PITCH, SHEET_LOAD -> {}
            }
        }
    }

    private void known(Unknown unknown, DockOffset offset) {
        mean[unknown.ordinal()] = offset.value();
        before[unknown.ordinal()] = offset.standardError();
    }

    private void chooseRows() {
        rows.put(Kind.WIND_NORTH, where(b -> 0));
        rows.put(Kind.WIND_EAST, where(b -> 0));
        rows.put(Kind.ACROSS, where(b -> b.moves().north()));
        rows.put(Kind.ALONG, where(b -> b.moves().north() + b.moves().water()));
        rows.put(Kind.CAMBER, where(b -> b.trim().camber()));
        rows.put(Kind.SHEET, where(b -> b.trim().sheet()));
        rows.put(Kind.TWIST, where(b -> b.trim().twist()));
    }

    private int[] where(ToDoubleFunction<Block> known) {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < blocks.size(); i++) {
            if (!Double.isNaN(known.applyAsDouble(blocks.get(i)))) {
                found.add(i);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Apparent wind over its mean on that point of sail, less 1 (-). */
    private double[] windOver() {
        double[] sum = new double[2];
        int[] count = new int[2];
        for (Block block : blocks) {
            sum[block.upwind() ? 0 : 1] += block.felt().speed();
            count[block.upwind() ? 0 : 1]++;
        }
        return blocks.stream()
                .mapToDouble(b -> b.felt().speed() * count[b.upwind() ? 0 : 1] / sum[b.upwind() ? 0 : 1] - 1)
                .toArray();
    }

    private static double pressure(Block block) {
        double ratio = block.felt().speed() / Math.max(1, block.moves().speed());
        return ratio * ratio;
    }

    boolean has(Kind kind) {
        return rowsOf(kind).length > 0;
    }

    /** Which unknowns the log speaks of. */
    boolean speaksOf(Unknown unknown) {
        return switch (unknown) {
            case WIND_ANGLE, UPWASH, WIND_SPEED, COMPASS, LEEWAY -> true;
            case BOAT_SPEED -> has(Kind.ALONG);
            case CAMBER -> has(Kind.CAMBER);
            case SHEET -> has(Kind.SHEET);
            case TWIST, VEER -> has(Kind.TWIST);
        };
    }

    /** Indices of the blocks that give that series. */
    int[] rowsOf(Kind kind) {
        int[] of = rows.get(kind);
        return of == null ? new int[0] : of;
    }

    double mean(int k) {
        return mean[k];
    }

    double before(int k) {
        return before[k];
    }

    /** A series of residuals (m/s, rad); of the wind the components themselves. */
    double[] series(Kind kind, double[] p) {
        return Arrays.stream(rowsOf(kind))
                .mapToDouble(i -> residual(kind, i, p))
                .toArray();
    }

    private double residual(Kind kind, int i, double[] p) {
        Block block = blocks.get(i);
        return switch (kind) {
            case WIND_NORTH -> wind(block, p)[0];
            case WIND_EAST -> wind(block, p)[1];
            case ACROSS -> through(block, p)[1];
            case ALONG -> through(block, p)[0] - block.moves().water() / (1 + get(p, Unknown.BOAT_SPEED));
            case CAMBER -> block.trim().camber() - get(p, Unknown.CAMBER) - alike(0, block, p) - trim(0, i, p);
            case SHEET ->
                block.trim().sheet()
                        - get(p, Unknown.SHEET)
                        - alike(1, block, p)
                        - block.felt().angle()
                        + offset(p)
                        + bend(block, p)
                        + trim(1, i, p);
            case TWIST ->
                block.trim().twist()
                        - get(p, Unknown.TWIST)
                        - alike(2, block, p)
                        - get(p, Unknown.VEER) * turnOfFelt(block)
                        - trim(2, i, p);
        };
    }

    private static double get(double[] p, Unknown unknown) {
        return p[unknown.ordinal()];
    }

    /** What the wind angle from the bow reads too much, upwash apart. */
    private double offset(double[] p) {
        return get(p, Unknown.WIND_ANGLE) + (turnsWithWing ? get(p, Unknown.SHEET) : 0);
    }

    private double bend(Block block, double[] p) {
        double upwash = get(p, Unknown.UPWASH);
        Block.Trim trim = block.trim();
        UpwashBasis.Set set = new UpwashBasis.Set(
                trim.camber() - get(p, Unknown.CAMBER),
                trim.sheet() - get(p, Unknown.SHEET),
                trim.twist() - get(p, Unknown.TWIST));
        double share =
                basis.share(new ApparentWind(block.felt().speed(), block.felt().angle() - offset(p)), set, upwash);
        // A block whose gauges were silent has upwash of its side.
        double shape = block.felt().side() * (block.upwind() ? p[SHAPE] : -p[SHAPE]);
        return shape + upwash * (Double.isNaN(share) ? block.felt().side() : share);
    }

    /** What the trim differs between tacks on that point of sail (rad). */
    private static double alike(int which, Block block, double[] p) {
        return p[ALIKE + 2 * which + (block.upwind() ? 0 : 1)];
    }

    private double trim(int which, int i, double[] p) {
        Block block = blocks.get(i);
        int at = TRIMS + which * TRIM + (block.upwind() ? 0 : 2);
        return block.felt().side() * (p[at] + p[at + 1] * windOver[i]);
    }

    /** By how much the apparent wind turns when the true wind does (-). */
    private double turnOfFelt(Block block) {
        double[] wind = wind(block, mean);
        double speed = StrictMath.hypot(wind[0], wind[1]);
        double from = StrictMath.atan2(wind[1], wind[0]);
        double felt = block.lies().heading() + block.felt().angle();
        return speed
                * StrictMath.cos(Angles.difference(from, felt))
                / block.felt().speed();
    }

    /** True wind, over ground where that is logged: where it comes from, north and east (m/s). */
    double[] wind(Block block, double[] p) {
        double turn = -offset(p) - bend(block, p) - get(p, Unknown.COMPASS);
        double size = block.felt().down() / (1 + get(p, Unknown.WIND_SPEED));
        double cos = StrictMath.cos(turn) * size;
        double sin = StrictMath.sin(turn) * size;
        Block.Felt felt = block.felt();
        double north = felt.north() * cos - felt.east() * sin;
        double east = felt.north() * sin + felt.east() * cos;
        double moveNorth = block.moves().north();
        double moveEast = block.moves().east();
        if (!block.moves().overGround()) {
            double way = way(block, p);
            double speed = block.moves().water() / (1 + get(p, Unknown.BOAT_SPEED));
            moveNorth = speed * StrictMath.cos(way);
            moveEast = speed * StrictMath.sin(way);
        }
        return new double[] {north - felt.down() * moveNorth, east - felt.down() * moveEast};
    }

    /** Direction of the way through the water (rad). */
    private double way(Block block, double[] p) {
        return block.lies().heading() - get(p, Unknown.COMPASS) - drift(block, p);
    }

    private double drift(Block block, double[] p) {
        return block.felt().side() * get(p, Unknown.LEEWAY) * pressure(block) / leeway;
    }

    /** Way through the water along and across its direction as heading and leeway have it (m/s). */
    private double[] through(Block block, double[] p) {
        double way = way(block, p);
        double north = block.moves().north() - p[CURRENT];
        double east = block.moves().east() - p[CURRENT + 1];
        double cos = StrictMath.cos(way);
        double sin = StrictMath.sin(way);
        return new double[] {north * cos + east * sin, east * cos - north * sin};
    }
}
