package trimwright.panel;

/**
 * Speeds along the surfaces at one angle of attack, and the forces that follow. Stream of speed 1; forces per unit of span
 * over dynamic pressure, lengths as the contours gave them.
 */
public final class SurfaceFlow {
    private final Panels panels;
    private final double alpha;
    private final double[] vorticity;

    SurfaceFlow(Panels panels, double alpha, double[] vorticity) {
        this.panels = panels;
        this.alpha = alpha;
        this.vorticity = vorticity;
    }

    /** The same panels with other vorticity. */
    SurfaceFlow with(double[] other) {
        return new SurfaceFlow(panels, alpha, other);
    }

    double vorticity(int node) {
        return vorticity[node];
    }

    /** Velocity at a point off the elements: along x, along y. */
    double[] velocityAt(double px, double py) {
        PointSpeed point = new PointSpeed(panels, px, py);
        return new double[] {
            speedAlong(1, 0, point.perVorticity(1, 0)), speedAlong(0, 1, point.perVorticity(0, 1)),
        };
    }

    /**
     * Speed in a direction at a point off the elements.
     *
     * @param perVorticity what each node's vorticity adds there in that direction
     */
    double speedAlong(double dirX, double dirY, double[] perVorticity) {
        return StrictMath.cos(alpha) * dirX
                + StrictMath.sin(alpha) * dirY
                + DenseLu.dot(perVorticity, vorticity, 0, panels.nodes);
    }

    public int elements() {
        return panels.elements;
    }

    /** Speed (-) at a point of an element's contour: positive if the surface flow runs against the order of points. */
    public double speed(int element, int point) {
        return vorticity[panels.begin(element) + point];
    }

    /** Pressure coefficient (-) there. */
    public double pressure(int element, int point) {
        double speed = speed(element, point);
        return 1 - speed * speed;
    }

    /** Lift by circulation over dynamic pressure: twice the vorticity on the element. */
    public double circulationLift(int element) {
        double sum = 0;
        for (int j = panels.begin(element); j < panels.end(element); j++) {
            sum += (vorticity[j] + vorticity[j + 1]) * panels.length[j];
        }
        return sum;
    }

    /** Lift of the pressure on an element, across the stream. */
    public double pressureLift(int element) {
        return pressureForceY(element) * StrictMath.cos(alpha) - pressureForceX(element) * StrictMath.sin(alpha);
    }

    /** Drag of the pressure on an element, along the stream; over all elements it vanishes but for panel errors. */
    public double pressureDrag(int element) {
        return pressureForceX(element) * StrictMath.cos(alpha) + pressureForceY(element) * StrictMath.sin(alpha);
    }

    private double pressureForceX(int element) {
        double sum = 0;
        for (int j = panels.begin(element); j < panels.end(element); j++) {
            sum += suction(j) * panels.ty[j] * panels.length[j];
        }
        int first = panels.begin(element);
        int last = panels.end(element);
        return sum + baseSuction(element) * (panels.y[first] - panels.y[last]);
    }

    private double pressureForceY(int element) {
        double sum = 0;
        for (int j = panels.begin(element); j < panels.end(element); j++) {
            sum -= suction(j) * panels.tx[j] * panels.length[j];
        }
        int first = panels.begin(element);
        int last = panels.end(element);
        return sum - baseSuction(element) * (panels.x[first] - panels.x[last]);
    }

    /**
     * Moment of the pressure on an element about a point, over dynamic pressure; positive nose up, that is trailing edge down.
     */
    public double moment(int element, double aboutX, double aboutY) {
        double sum = 0;
        for (int j = panels.begin(element); j < panels.end(element); j++) {
            double arm = (0.5 * (panels.x[j] + panels.x[j + 1]) - aboutX) * panels.tx[j]
                    + (0.5 * (panels.y[j] + panels.y[j + 1]) - aboutY) * panels.ty[j];
            // Suction that rises along the panel acts behind its middle.
            double first = vorticity[j];
            double last = vorticity[j + 1];
            double shift = (last * last - first * first) * panels.length[j] / 12;
            sum += (suction(j) * arm + shift) * panels.length[j];
        }
        return sum;
    }

    /** Speed squared at the corners of the trailing edge, which a thick one has all along its base. */
    private double baseSuction(int element) {
        double first = vorticity[panels.begin(element)];
        double last = vorticity[panels.end(element)];
        return 0.5 * (first * first + last * last);
    }

    /** Mean of speed squared along a panel with linear speed. */
    private double suction(int panel) {
        double a = vorticity[panel];
        double b = vorticity[panel + 1];
        return (a * a + a * b + b * b) / 3;
    }

    /** Pressure at the trailing edge less the least pressure on the element, as coefficients: positive. */
    public double pressureRise(int element) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < panels.end(element) - panels.begin(element); i++) {
            least = Math.min(least, pressure(element, i));
        }
        return pressure(element, 0) - least;
    }
}
