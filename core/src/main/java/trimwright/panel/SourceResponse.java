package trimwright.panel;

import java.util.List;
import trimwright.profile.Contour;

/**
 * How the speeds along given elements answer to flow that their boundary layers displace. Computed once for the elements;
 * {@link #at} adds the wakes of one angle of attack.
 *
 * <p>Displaced flow is the product of edge speed and displacement thickness, counted along the order of points: negative where
 * the flow runs against it. Its growth along a panel is the strength of a source there.
 */
public final class SourceResponse {
    final Panels panels;
    final PanelEquations equations;
    private final IdealFlow ideal;

    /** Vorticity at a node (row) per displaced flow at a node (column). */
    final double[][] bodies;

    /**
     * Of these elements.
     *
     * @throws NoFlowException if elements touch or cross
     */
    public SourceResponse(List<Contour> contours) {
        panels = new Panels(contours);
        equations = new PanelEquations(panels);
        ideal = new IdealFlow(equations);
        double[][] streams = new double[panels.nodes][panels.nodes];
        double[] stream = new double[panels.nodes];
        for (int k = 0; k < panels.elements; k++) {
            for (int j = panels.begin(k); j < panels.end(k); j++) {
                SourceStream.fill(panels, panels.x[j], panels.y[j], panels.x[j + 1], panels.y[j + 1], stream);
                for (int i = 0; i < panels.nodes; i++) {
                    double perFlow = stream[i] / panels.length[j];
                    streams[i][j] -= perFlow;
                    streams[i][j + 1] += perFlow;
                }
            }
        }
        bodies = equations.vorticities(streams);
    }

    public IdealFlow ideal() {
        return ideal;
    }

    /**
     * With the wakes of this angle of attack (rad).
     *
     * @param wakeSteps stations along each wake
     * @param wakeReach length of each wake, as the contours' lengths
     */
    public DisplacedFlow at(double alpha, int wakeSteps, double wakeReach) {
        return new DisplacedFlow(this, ideal.at(alpha), wakeSteps, wakeReach);
    }
}
