package trimwright.wing;

/** Velocity that a solved wing and its image add at any point: upwash at a wind sensor, downwash behind. */
final class InducedVelocity {
    /** Added to the square of distances (m2), so that a point on a vortex gets no infinite velocity. Chosen: 1 mm. */
    private static final double CORE = 1e-6;

    private final double ux;
    private final double uy;
    private final double uz;
    private double x;
    private double y;
    private double z;

    private InducedVelocity(Influence influence) {
        ux = influence.ux;
        uy = influence.uy;
        uz = influence.uz;
    }

    static AirVelocity at(PlacedWing placed, WingSolved solved, double px, double py, double pz) {
        StripFlow flow = solved.flow();
        if (flow == null) {
            return new AirVelocity(0, 0, 0);
        }
        InducedVelocity sum = new InducedVelocity(flow.influence);
        Wing wing = placed.wing();
        double sin = StrictMath.sin(placed.heel());
        double cos = StrictMath.cos(placed.heel());
        int n = wing.strips();
        for (int j = 0; j < n; j++) {
            double low = wing.node(j);
            double high = wing.node(j + 1);
            double gamma = solved.circulation(j) / (4 * Math.PI);
            sum.horseshoe(gamma, px, py, pz + low, py, pz + high);
            if (placed.hasSea()) {
                double lowDepth = 2 * (placed.footHeight() + low * cos);
                double highDepth = 2 * (placed.footHeight() + high * cos);
                // Image: nodes in reverse order.
                sum.horseshoe(
                        gamma,
                        px,
                        py - highDepth * sin,
                        pz + high - highDepth * cos,
                        py - lowDepth * sin,
                        pz + low - lowDepth * cos);
            }
        }
        PlateFlow plate = flow.influence.plate();
        if (plate != null) {
            sum.plate(placed, plate, solved.circulations(), px, py, pz);
        }
        return new AirVelocity(sum.x, sum.y, sum.z);
    }

    private void plate(PlacedWing placed, PlateFlow plate, double[] circulation, double px, double py, double pz) {
        double[] shed = plate.shed(circulation);
        double sin = StrictMath.sin(placed.heel());
        double cos = StrictMath.cos(placed.heel());
        for (int k = 0; k < shed.length; k++) {
            double gamma = shed[k] / (4 * Math.PI);
            double ny = plate.nodeY(k);
            double nz = plate.nodeZ(k);
            leg(gamma, px, py - ny, pz - nz);
            if (placed.hasSea()) {
                double depth = 2 * (placed.footHeight() - ny * sin - nz * cos);
                leg(-gamma, px, py - ny - depth * sin, pz - nz - depth * cos);
            }
        }
    }

    // Vectors from the first and the second node to the point; both share the component forward.
    private void horseshoe(double gamma, double rx, double y1, double z1, double y2, double z2) {
        leg(-gamma, rx, y1, z1);
        leg(gamma, rx, y2, z2);
        double r1 = Math.sqrt(rx * rx + y1 * y1 + z1 * z1 + CORE);
        double r2 = Math.sqrt(rx * rx + y2 * y2 + z2 * z2 + CORE);
        double dot = rx * rx + y1 * y2 + z1 * z2;
        double f = gamma * (r1 + r2) / (r1 * r2 * (r1 * r2 + dot + CORE));
        x += f * (y1 * z2 - z1 * y2);
        y += f * (z1 * rx - rx * z2);
        z += f * (rx * y2 - y1 * rx);
    }

    private void leg(double gamma, double rx, double ry, double rz) {
        double r = Math.sqrt(rx * rx + ry * ry + rz * rz + CORE);
        double f = gamma / (r * (r - ux * rx - uy * ry - uz * rz) + CORE);
        x += f * (uy * rz - uz * ry);
        y += f * (uz * rx - ux * rz);
        z += f * (ux * ry - uy * rx);
    }
}
