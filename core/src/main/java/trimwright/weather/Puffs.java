package trimwright.weather;

import trimwright.chance.RandomStream;

/**
 * Patches of stronger wind, as one sees them come over the water: some hundred metres long, fanning out at their sides.
 *
 * <p>They lie in a lattice of cells that moves with the mean wind; each cell draws by itself whether it holds a puff, so the
 * field needs no end and no memory. Sizes and fan: chosen (common practice, no source).
 */
final class Puffs {
    /** Cell of the lattice (m): chosen, about three puffs' widths, so that neighbours suffice. */
    private static final double CELL = 420;

    private static final double SHARE_OF_CELLS = 0.45;
    private static final double FAN = 0.10;

    private final long seed;
    private final double strength;

    /** @param strength mean rise of speed at a puff's middle, over the mean wind (-) */
    Puffs(double strength, long seed) {
        this.strength = strength;
        this.seed = seed;
    }

    /** Rise of speed over the mean wind (-) in [0] and veer (rad) in [1], at a place carried with the air. */
    void at(double alongWind, double crossWind, double[] riseAndVeer) {
        riseAndVeer[0] = 0;
        riseAndVeer[1] = 0;
        if (strength == 0) {
            return;
        }
        long i0 = (long) Math.floor(alongWind / CELL);
        long j0 = (long) Math.floor(crossWind / CELL);
        for (long i = i0 - 1; i <= i0 + 1; i++) {
            for (long j = j0 - 1; j <= j0 + 1; j++) {
                addCell(i, j, alongWind, crossWind, riseAndVeer);
            }
        }
    }

    private void addCell(long i, long j, double alongWind, double crossWind, double[] riseAndVeer) {
        RandomStream random = RandomStream.ofCell(seed, i, j);
        if (random.uniform() > SHARE_OF_CELLS) {
            return;
        }
        double x = (i + random.uniform()) * CELL;
        double y = (j + random.uniform()) * CELL;
        double length = random.uniform(90, 150);
        double width = random.uniform(50, 110);
        double rise = strength * random.uniform(0.5, 1.5);
        double dx = (alongWind - x) / length;
        double dy = (crossWind - y) / width;
        double square = dx * dx + dy * dy;
        if (square > 16) {
            return;
        }
        double bell = StrictMath.exp(-square / 2);
        riseAndVeer[0] += rise * bell;
        riseAndVeer[1] += FAN * dy * bell;
    }
}
