package trimwright.panel;

/** The line along which an element's wake leaves: points from the trailing edge downstream along a streamline. */
final class Wake {
    /** Longest piece of the path followed at once, over the length unit; chosen: below a flap's nose radius. */
    private static final double LONGEST_PIECE = 0.004;

    /** Nearest that a wake comes to another element, over the length unit; chosen: half of a usual slot. */
    private static final double CLEARANCE = 0.006;

    /** Points; number 0 is the trailing edge itself. */
    final double[] x;

    final double[] y;

    private final double[] length;

    private Wake(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        length = new double[x.length - 1];
        for (int i = 0; i < length.length; i++) {
            length[i] = StrictMath.hypot(x[i + 1] - x[i], y[i + 1] - y[i]);
        }
    }

    /**
     * Follows the ideal flow from an element's trailing edge.
     *
     * @param steps number of steps, lengthening geometrically from the last panel's length
     * @param reach length in all
     */
    static Wake trace(Panels panels, int element, SurfaceFlow flow, int steps, double reach) {
        double[] x = new double[steps + 1];
        double[] y = new double[steps + 1];
        int first = panels.begin(element);
        int last = panels.end(element);
        x[0] = 0.5 * (panels.x[first] + panels.x[last]);
        y[0] = 0.5 * (panels.y[first] + panels.y[last]);
        // Leaves along the bisector of the trailing edge.
        double dirX = panels.tx[last - 1] - panels.tx[first];
        double dirY = panels.ty[last - 1] - panels.ty[first];
        double size = StrictMath.hypot(dirX, dirY);
        dirX /= size;
        dirY /= size;
        double step = 0.5 * (panels.length[first] + panels.length[last - 1]);
        double growth = growth(steps, reach / step);
        for (int i = 0; i < steps; i++) {
            if (i == 0) {
                x[1] = x[0] + step * dirX;
                y[1] = y[0] + step * dirY;
            } else {
                double[] end = follow(panels, element, flow, x[i], y[i], step);
                x[i + 1] = end[0];
                y[i + 1] = end[1];
            }
            step *= growth;
        }
        return new Wake(x, y);
    }

    /**
     * Place reached along the streamline after a length, in pieces short enough for the curve round a flap's nose. Nearer to
     * another element than a wake is thick, the path runs along its surface.
     */
    private static double[] follow(
            Panels panels, int element, SurfaceFlow flow, double fromX, double fromY, double length) {
        int pieces = panels.elements == 1 ? 1 : (int) Math.ceil(length / LONGEST_PIECE);
        double piece = length / pieces;
        double[] at = {fromX, fromY};
        for (int i = 0; i < pieces; i++) {
            double[] here = direction(panels, element, flow, at[0], at[1]);
            double[] ahead =
                    direction(panels, element, flow, at[0] + 0.5 * piece * here[0], at[1] + 0.5 * piece * here[1]);
            at[0] += piece * ahead[0];
            at[1] += piece * ahead[1];
        }
        return at;
    }

    /** Unit vector along which the wake goes on. */
    private static double[] direction(Panels panels, int element, SurfaceFlow flow, double px, double py) {
        double[] velocity = flow.velocityAt(px, py);
        double nearest = CLEARANCE;
        int panel = -1;
        for (int k = 0; k < panels.elements; k++) {
            for (int j = panels.begin(k); k != element && j < panels.end(k); j++) {
                double along = (px - panels.x[j]) * panels.tx[j] + (py - panels.y[j]) * panels.ty[j];
                double inside = Math.min(panels.length[j], Math.max(0, along));
                double away = StrictMath.hypot(
                        px - panels.x[j] - inside * panels.tx[j], py - panels.y[j] - inside * panels.ty[j]);
                if (away < nearest) {
                    nearest = away;
                    panel = j;
                }
            }
        }
        if (panel >= 0) {
            double tx = panels.tx[panel];
            double ty = panels.ty[panel];
            double along = velocity[0] * tx + velocity[1] * ty > 0 ? 1 : -1;
            double outward = Math.max(velocity[0] * ty - velocity[1] * tx, 1 - nearest / CLEARANCE);
            double sideways = Math.max(Math.abs(velocity[0] * tx + velocity[1] * ty), 0.5);
            velocity[0] = along * sideways * tx + outward * ty;
            velocity[1] = along * sideways * ty - outward * tx;
        }
        double speed = StrictMath.hypot(velocity[0], velocity[1]);
        velocity[0] /= speed;
        velocity[1] /= speed;
        return velocity;
    }

    /** Ratio of steps that sum to so many first steps. */
    private static double growth(int steps, double sum) {
        double low = 1;
        double high = 4;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            double reached = (StrictMath.pow(middle, steps) - 1) / (middle - 1);
            if (reached < sum) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    int steps() {
        return x.length - 1;
    }

    double length(int step) {
        return length[step];
    }
}
