package trimwright.wing;

import org.jspecify.annotations.Nullable;
import trimwright.boat.FootPlate;

/**
 * The plate under the foot, cut into strips athwart, as the placed wing and its wakes see it. Strips crowd toward the edges
 * and toward the foot above the middle.
 */
final class PlacedPlate {
    /** Chosen: for gaps above a thousandth of the span more strips change drag by less than 1e-4. Even. */
    static final int STRIPS = 12;

    /** Least scale of strips under the foot, over half the width (-), chosen. */
    private static final double FINEST = 1e-3;

    /** Square of a heel (-) that rounds the change of the lower edge from side to side: chosen. */
    private static final double LEVEL = 1e-4;

    /** Clearance of the lower edge over the sea (m) below which the plate fades out, gone as it dips: chosen. */
    private static final double CLEAR = 0.3;

    final double solidity;
    final double solidityByHeel;
    final double solidityByFoot;
    final double[] nodeY;
    final double[] nodeZ;
    final LegField fromWing;
    final LegField fromPlate;
    final LegField toWing;

    private PlacedPlate(PlacedWing placed, FootPlate plate, double clearance) {
        double share = Math.min(1, clearance / CLEAR);
        solidity = plate.solidity() * share * share * (3 - 2 * share);
        solidityByFoot = plate.solidity() * 6 * share * (1 - share) / CLEAR;
        solidityByHeel = solidityByFoot * clearanceByHeel(placed, plate);
        Wing wing = placed.wing();
        int n = wing.strips();
        nodeY = new double[STRIPS + 1];
        nodeZ = new double[STRIPS + 1];
        double[] middleY = new double[STRIPS];
        double[] middleZ = new double[STRIPS];
        for (int m = 0; m <= STRIPS; m++) {
            nodeY[m] = place(plate, m);
            nodeZ[m] = plate.gap();
        }
        for (int m = 0; m < STRIPS; m++) {
            middleY[m] = place(plate, m + 0.5);
            middleZ[m] = plate.gap();
        }
        double[] wingNodeZ = new double[n + 1];
        for (int k = 0; k <= n; k++) {
            wingNodeZ[k] = -wing.node(k);
        }
        double[] stripZ = new double[n];
        for (int i = 0; i < n; i++) {
            stripZ[i] = -wing.stripHeight(i);
        }
        fromWing = new LegField(placed, new double[n + 1], wingNodeZ, middleY, middleZ);
        fromPlate = new LegField(placed, nodeY, nodeZ, middleY, middleZ);
        toWing = new LegField(placed, nodeY, nodeZ, new double[n], stripZ);
    }

    /** Null where it reaches the sea. */
    static @Nullable PlacedPlate of(PlacedWing placed, FootPlate plate) {
        double sin = StrictMath.sin(placed.heel());
        double clearance = placed.footHeight()
                - plate.gap() * StrictMath.cos(placed.heel())
                - plate.width() / 2 * Math.sqrt(sin * sin + LEVEL);
        return clearance > 0 ? new PlacedPlate(placed, plate, clearance) : null;
    }

    private static double clearanceByHeel(PlacedWing placed, FootPlate plate) {
        double sin = StrictMath.sin(placed.heel());
        double cos = StrictMath.cos(placed.heel());
        return plate.gap() * sin - plate.width() / 2 * sin * cos / Math.sqrt(sin * sin + LEVEL);
    }

    /** From port to starboard over m from 0 to STRIPS: as dense under the foot as the gap asks, and dense at the edges. */
    private static double place(FootPlate plate, double m) {
        double half = plate.width() / 2;
        double fine = Math.max(plate.gap(), FINEST * half);
        double reach = StrictMath.log(half / fine + Math.sqrt(half * half / (fine * fine) + 1));
        double t = reach * StrictMath.sin(Math.PI / 2 * (2 * m / STRIPS - 1));
        return fine * (StrictMath.exp(t) - StrictMath.exp(-t)) / 2;
    }
}
