package trimwright.panel;

/** The line along which an element's wake leaves: points from the trailing edge downstream along a streamline. */
final class Wake {
    /** Points; number 0 is the trailing edge itself. */
    final double[] x;

    final double[] y;

    private Wake(double[] x, double[] y) {
        this.x = x;
        this.y = y;
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
        double size = Math.hypot(dirX, dirY);
        dirX /= size;
        dirY /= size;
        double step = 0.5 * (panels.length[first] + panels.length[last - 1]);
        double growth = growth(steps, reach / step);
        for (int i = 0; i < steps; i++) {
            if (i > 0) {
                double[] here = flow.velocityAt(x[i], y[i]);
                double[] ahead = flow.velocityAt(
                        x[i] + 0.5 * step * here[0] / Math.hypot(here[0], here[1]),
                        y[i] + 0.5 * step * here[1] / Math.hypot(here[0], here[1]));
                double speed = Math.hypot(ahead[0], ahead[1]);
                dirX = ahead[0] / speed;
                dirY = ahead[1] / speed;
            }
            x[i + 1] = x[i] + step * dirX;
            y[i + 1] = y[i] + step * dirY;
            step *= growth;
        }
        return new Wake(x, y);
    }

    /** Ratio of steps that sum to so many first steps. */
    private static double growth(int steps, double sum) {
        double low = 1;
        double high = 4;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            double reached = (Math.pow(middle, steps) - 1) / (middle - 1);
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
        return Math.hypot(x[step + 1] - x[step], y[step + 1] - y[step]);
    }
}
