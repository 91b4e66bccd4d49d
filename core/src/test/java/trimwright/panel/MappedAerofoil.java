package trimwright.panel;

import trimwright.profile.Contour;

/**
 * Exact flow about aerofoils that a circle maps to by Karman and Trefftz's function (two straight tangents at the trailing
 * edge; angle 0 is Joukowski's cusp). Closed form, worked out here.
 */
final class MappedAerofoil {
    private final double radius;
    private final double centreX;
    private final double centreY;
    private final double power;

    /**
     * @param centreX of the circle, negative gives thickness
     * @param centreY of the circle, positive gives camber
     * @param edgeAngle of the trailing edge (rad)
     */
    MappedAerofoil(double centreX, double centreY, double edgeAngle) {
        this.centreX = centreX;
        this.centreY = centreY;
        radius = Math.hypot(1 - centreX, centreY);
        power = 2 - edgeAngle / Math.PI;
    }

    /** Points at even steps of the circle's angle, trailing edge over the upper side. */
    Contour contour(int panels) {
        double[] x = new double[panels + 1];
        double[] y = new double[panels + 1];
        for (int i = 0; i <= panels; i++) {
            double[] z = i % panels == 0 ? new double[] {power, 0} : map(circle(edge() + 2 * Math.PI * i / panels));
            x[i] = z[0];
            y[i] = z[1];
        }
        return Contour.of(x, y);
    }

    /** Lift over dynamic pressure at an angle of attack: 8 pi R sin(alpha + beta), whatever the map. */
    double lift(double alpha) {
        return 8 * Math.PI * radius * Math.sin(alpha - edge());
    }

    /** Angle at which the circle passes through the point that becomes the trailing edge. */
    private double edge() {
        return Math.atan2(-centreY, 1 - centreX);
    }

    private double[] circle(double angle) {
        return new double[] {centreX + radius * Math.cos(angle), centreY + radius * Math.sin(angle)};
    }

    /** (z - n)/(z + n) = ((zeta - 1)/(zeta + 1))^n. */
    private double[] map(double[] zeta) {
        double[] ratio = divide(new double[] {zeta[0] - 1, zeta[1]}, new double[] {zeta[0] + 1, zeta[1]});
        // The cut of the argument lies between -1 and 1, inside the circle.
        double argument = Math.atan2(ratio[1], ratio[0]);
        double size = Math.pow(Math.hypot(ratio[0], ratio[1]), power);
        double[] raised = {size * Math.cos(power * argument), size * Math.sin(power * argument)};
        double[] result = divide(new double[] {1 + raised[0], raised[1]}, new double[] {1 - raised[0], -raised[1]});
        return new double[] {power * result[0], power * result[1]};
    }

    private static double[] divide(double[] a, double[] b) {
        double size = b[0] * b[0] + b[1] * b[1];
        return new double[] {(a[0] * b[0] + a[1] * b[1]) / size, (a[1] * b[0] - a[0] * b[1]) / size};
    }
}
