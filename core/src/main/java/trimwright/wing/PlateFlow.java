package trimwright.wing;

/**
 * The plate under the foot for one trailing direction: strips of circulation of its own, such that what the wing's wakes and
 * its own blow through it vanishes; a plate that is not solid carries that share of it. Its edges shed lines that trail with
 * the wing's. The bound lines across it are left out: upright their parts from port and starboard cancel at the wing.
 */
final class PlateFlow {
    private final PlacedPlate plate;
    private final double[] u;
    private final LuFactors lu;

    private PlateFlow(PlacedPlate plate, double[] u) {
        this.plate = plate;
        this.u = u;
        lu = new LuFactors(PlacedPlate.STRIPS);
    }

    static PlateFlow of(PlacedPlate plate, double[] trail) {
        PlateFlow flow = new PlateFlow(plate, trail);
        double[][] through = legs(plate.fromPlate, trail, PlacedPlate.STRIPS)[2];
        for (int m = 0; m < PlacedPlate.STRIPS; m++) {
            difference(through[m + 1], through[m], flow.lu.columns()[m]);
        }
        if (!flow.lu.factor()) {
            throw new IllegalStateException("the plate's equations are singular");
        }
        return flow;
    }

    /** Adds to what each wing strip's unit circulation makes at the others. */
    void addTo(double[][] x, double[][] y) {
        double[][] through = legs(plate.fromWing, u, PlacedPlate.STRIPS)[2];
        double[][][] back = legs(plate.toWing, u, x.length);
        double[] carried = new double[PlacedPlate.STRIPS];
        for (int j = 0; j < x.length; j++) {
            difference(through[j], through[j + 1], carried);
            lu.solve(carried);
            for (int k = 0; k <= PlacedPlate.STRIPS; k++) {
                double strength = plate.solidity * strength(carried, k);
                addScaled(back[0][k], strength, x[j]);
                addScaled(back[1][k], strength, y[j]);
            }
        }
    }

    /** Strengths of the lines that the plate sheds, from port to starboard, under the wing's circulations. */
    double[] shed(double[] gamma) {
        double[] carried = carried(gamma);
        double[] shed = new double[PlacedPlate.STRIPS + 1];
        for (int k = 0; k < shed.length; k++) {
            shed[k] = plate.solidity * strength(carried, k);
        }
        return shed;
    }

    double nodeY(int k) {
        return plate.nodeY[k];
    }

    double nodeZ(int k) {
        return plate.nodeZ[k];
    }

    /** Adds the first-order change at the wing's strips under held circulations of the wing. */
    void addChange(double[] gamma, double[] du, double heel, double foot, double[] toX, double[] toY) {
        double[] carried = carried(gamma);
        double[] aside = new double[PlacedPlate.STRIPS];
        double[] along = new double[PlacedPlate.STRIPS];
        double[] through = new double[PlacedPlate.STRIPS];
        for (int k = 0; k < plate.fromWing.nodes(); k++) {
            plate.fromWing.addChange(k, strength(gamma, k), u, du, heel, foot, along, aside, through);
        }
        for (int k = 0; k <= PlacedPlate.STRIPS; k++) {
            plate.fromPlate.addChange(k, strength(carried, k), u, du, heel, foot, along, aside, through);
        }
        lu.solve(through);
        double[] unused = new double[toX.length];
        double thicker = plate.solidityByHeel * heel + plate.solidityByFoot * foot;
        for (int k = 0; k <= PlacedPlate.STRIPS; k++) {
            double strength = plate.solidity * strength(carried, k);
            plate.toWing.addChange(k, strength, u, du, heel, foot, toX, toY, unused);
            double change = thicker * strength(carried, k) - plate.solidity * strength(through, k);
            plate.toWing.add(k, change, u, toX, toY, unused);
        }
    }

    private double[] carried(double[] gamma) {
        double[] aside = new double[PlacedPlate.STRIPS];
        double[] along = new double[PlacedPlate.STRIPS];
        double[] carried = new double[PlacedPlate.STRIPS];
        for (int k = 0; k < plate.fromWing.nodes(); k++) {
            plate.fromWing.add(k, -strength(gamma, k), u, along, aside, carried);
        }
        lu.solve(carried);
        return carried;
    }

    /** Strength of the line that trails from a node between two strips. */
    private static double strength(double[] gamma, int node) {
        return (node > 0 ? gamma[node - 1] : 0) - (node < gamma.length ? gamma[node] : 0);
    }

    private static double[][][] legs(LegField field, double[] u, int points) {
        double[][][] legs = new double[3][field.nodes()][points];
        for (int k = 0; k < field.nodes(); k++) {
            field.add(k, 1, u, legs[0][k], legs[1][k], legs[2][k]);
        }
        return legs;
    }

    private static void difference(double[] high, double[] low, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] = high[i] - low[i];
        }
    }

    private static void addScaled(double[] from, double factor, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] += from[i] * factor;
        }
    }
}
