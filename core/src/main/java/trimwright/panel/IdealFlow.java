package trimwright.panel;

import java.util.List;
import trimwright.profile.Contour;

/**
 * Ideal flow of speed 1 about one or more elements, for every angle of attack: the equations are solved once for a stream
 * along x and once for a stream along y. Speeds are over the stream's, forces over dynamic pressure.
 *
 * <p>Valid while no element touches another. Exact flows that it is checked against: docs/theory/section-flow.md.
 */
public final class IdealFlow {
    private final Panels panels;
    private final double[] alongX;
    private final double[] alongY;

    /**
     * About these elements.
     *
     * @throws NoFlowException if elements touch or cross so that the equations have no solution
     */
    public IdealFlow(List<Contour> contours) {
        this(new PanelEquations(new Panels(contours)));
    }

    IdealFlow(PanelEquations equations) {
        panels = equations.panels;
        double[] minusX = new double[panels.nodes];
        for (int i = 0; i < panels.nodes; i++) {
            minusX[i] = -panels.x[i];
        }
        alongX = equations.vorticity(panels.y);
        alongY = equations.vorticity(minusX);
    }

    /** At an angle of attack (rad), any; positive: the stream comes from below. */
    public SurfaceFlow at(double alpha) {
        double cos = StrictMath.cos(alpha);
        double sin = StrictMath.sin(alpha);
        double[] vorticity = new double[panels.nodes];
        for (int i = 0; i < panels.nodes; i++) {
            vorticity[i] = cos * alongX[i] + sin * alongY[i];
        }
        return new SurfaceFlow(panels, alpha, vorticity);
    }
}
