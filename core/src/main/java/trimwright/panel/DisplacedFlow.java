package trimwright.panel;

/**
 * Speeds at the stations of the boundary layers at one angle of attack: linear in the displaced flow of all stations.
 * Stations: the nodes of all elements in order, then the points of each wake but its first, which is the trailing edge.
 */
public final class DisplacedFlow {
    private final Panels panels;
    private final SurfaceFlow ideal;
    private final Wake[] wakes;
    private final int stations;
    private final double[] speed;
    private final double[][] response;

    DisplacedFlow(SourceResponse source, SurfaceFlow ideal, int wakeSteps, double wakeReach) {
        panels = source.panels;
        this.ideal = ideal;
        wakes = new Wake[panels.elements];
        for (int k = 0; k < panels.elements; k++) {
            wakes[k] = Wake.trace(panels, k, ideal, wakeSteps, wakeReach);
        }
        stations = panels.nodes + panels.elements * wakeSteps;
        speed = new double[stations];
        response = new double[stations][stations];
        double[][] vorticity = vorticityResponse(source, wakeSteps);
        for (int i = 0; i < panels.nodes; i++) {
            speed[i] = -ideal.vorticity(i);
            for (int j = 0; j < stations; j++) {
                response[i][j] = -vorticity[i][j];
            }
        }
        for (int k = 0; k < panels.elements; k++) {
            fillWake(k, vorticity);
        }
    }

    /** Vorticity at each node per displaced flow at each station. */
    private double[][] vorticityResponse(SourceResponse source, int wakeSteps) {
        int columns = panels.elements * wakeSteps + panels.elements;
        double[][] streams = new double[panels.nodes][columns];
        double[] stream = new double[panels.nodes];
        for (int k = 0; k < panels.elements; k++) {
            for (int w = 0; w < wakeSteps; w++) {
                Wake wake = wakes[k];
                SourceStream.fill(panels, wake.x[w], wake.y[w], wake.x[w + 1], wake.y[w + 1], stream);
                int after = k * (wakeSteps + 1) + w + 1;
                for (int i = 0; i < panels.nodes; i++) {
                    double perFlow = stream[i] / wake.length(w);
                    streams[i][after - 1] -= perFlow;
                    streams[i][after] += perFlow;
                }
            }
        }
        double[][] wakeVorticity = source.equations.vorticities(streams);
        double[][] all = new double[panels.nodes][stations];
        for (int i = 0; i < panels.nodes; i++) {
            System.arraycopy(source.bodies[i], 0, all[i], 0, panels.nodes);
            for (int k = 0; k < panels.elements; k++) {
                // A wake begins with what both sides of its element bring to the trailing edge.
                double edge = wakeVorticity[i][k * (wakeSteps + 1)];
                all[i][panels.begin(k)] -= edge;
                all[i][panels.end(k)] += edge;
                System.arraycopy(wakeVorticity[i], k * (wakeSteps + 1) + 1, all[i], wakeStation(k, 0), wakeSteps);
            }
        }
        return all;
    }

    private void fillWake(int element, double[][] vorticity) {
        Wake wake = wakes[element];
        int steps = wake.steps();
        double[][] middles = new double[steps][];
        double[] middleSpeed = new double[steps];
        for (int w = 0; w < steps; w++) {
            double px = 0.5 * (wake.x[w] + wake.x[w + 1]);
            double py = 0.5 * (wake.y[w] + wake.y[w + 1]);
            double dirX = (wake.x[w + 1] - wake.x[w]) / wake.length(w);
            double dirY = (wake.y[w + 1] - wake.y[w]) / wake.length(w);
            PointSpeed point = new PointSpeed(panels, px, py);
            double[] perVorticity = point.perVorticity(dirX, dirY);
            middleSpeed[w] = ideal.speedAlong(dirX, dirY, perVorticity);
            middles[w] = combined(perVorticity, vorticity);
            addSources(point, px, py, dirX, dirY, middles[w]);
        }
        for (int w = 0; w < steps; w++) {
            int station = wakeStation(element, w);
            int next = Math.min(w + 1, steps - 1);
            // Speed at a point from the middles of the steps to either side, by distance.
            double share = next == w ? 0 : wake.length(w) / (wake.length(w) + wake.length(next));
            speed[station] = (1 - share) * middleSpeed[w] + share * middleSpeed[next];
            for (int j = 0; j < stations; j++) {
                response[station][j] = (1 - share) * middles[w][j] + share * middles[next][j];
            }
        }
    }

    /** Speed per displaced flow at each station by the vorticity that it makes. */
    private double[] combined(double[] perVorticity, double[][] vorticity) {
        double[] row = new double[stations];
        for (int i = 0; i < panels.nodes; i++) {
            double weight = perVorticity[i];
            double[] perFlow = vorticity[i];
            for (int j = 0; j < stations; j++) {
                row[j] += weight * perFlow[j];
            }
        }
        return row;
    }

    /** Adds the speed in a direction at a point of a wake by the sources themselves. */
    private void addSources(PointSpeed point, double px, double py, double dirX, double dirY, double[] row) {
        for (int k = 0; k < panels.elements; k++) {
            for (int j = panels.begin(k); j < panels.end(k); j++) {
                double at = point.perSource(j, dirX, dirY) * panels.inverseLength[j];
                row[j] -= at;
                row[j + 1] += at;
            }
            Wake wake = wakes[k];
            for (int w = 0; w < wake.steps(); w++) {
                double at = PointSpeed.source(wake.x[w], wake.y[w], wake.x[w + 1], wake.y[w + 1], px, py, dirX, dirY)
                        / wake.length(w);
                row[wakeStation(k, w)] += at;
                if (w > 0) {
                    row[wakeStation(k, w - 1)] -= at;
                } else {
                    row[panels.begin(k)] += at;
                    row[panels.end(k)] -= at;
                }
            }
        }
    }

    public int elements() {
        return panels.elements;
    }

    /** Stations in all. */
    public int stations() {
        return stations;
    }

    /** Stations along each wake. */
    public int wakeSteps() {
        return wakes[0].steps();
    }

    /** Station of an element's first point, the trailing edge on the upper side. */
    public int firstStation(int element) {
        return panels.begin(element);
    }

    /** Station of an element's last point, the trailing edge on the lower side. */
    public int lastStation(int element) {
        return panels.end(element);
    }

    /** Station of a point of an element's wake, from 0 behind the trailing edge. */
    public int wakeStation(int element, int step) {
        return panels.nodes + element * wakes[0].steps() + step;
    }

    /** Length from a wake's point before to this one; before the first lies the trailing edge. */
    public double wakeLength(int element, int step) {
        return wakes[element].length(step);
    }

    /** Length of the panel from a node of an element to the next. */
    public double panelLength(int node) {
        return panels.length[node];
    }

    /** Place along x of a station on an element. */
    public double x(int node) {
        return panels.x[node];
    }

    /** Ideal speed at a station: along the order of points on elements, downstream in wakes. */
    public double idealSpeed(int station) {
        return speed[station];
    }

    /** Speed at a station per displaced flow at another. */
    public double response(int station, int displacedAt) {
        return response[station][displacedAt];
    }

    /**
     * Fills a row with the responses of the speed at a station.
     *
     * @param factor for all
     * @param factors by station of the displaced flow
     */
    public void fillResponse(int station, double factor, double[] factors, double[] row) {
        double[] from = response[station];
        for (int j = 0; j < stations; j++) {
            row[j] = factor * factors[j] * from[j];
        }
    }

    /** Speed at a station for a displaced flow at all stations. */
    public double speed(int station, double[] displaced) {
        return speed[station] + DenseLu.dot(response[station], displaced, 0, stations);
    }

    /** Speeds along the surfaces as given by station, in place of the ideal ones: for their forces. */
    public SurfaceFlow surface(double[] speeds) {
        double[] vorticity = new double[panels.nodes];
        for (int i = 0; i < panels.nodes; i++) {
            vorticity[i] = -speeds[i];
        }
        return ideal.with(vorticity);
    }
}
