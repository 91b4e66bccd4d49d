package trimwright.prepare;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.layer.LayerSide;
import trimwright.layer.ViscousAnswer;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;
import trimwright.panel.IdealFlow;
import trimwright.panel.NoFlowException;
import trimwright.panel.SurfaceFlow;
import trimwright.polar.PastStall;
import trimwright.profile.Contour;
import trimwright.text.NoAnswerException;
import trimwright.text.Texts;

/** Computes the flow of a request, angle by angle, each from the answer before. */
public final class FlowRun {
    /** Farther angles of attack (rad) are not asked of the layers: no section holds its flow there. Chosen. */
    private static final double FARTHEST = Math.toRadians(30);

    private FlowRun() {}

    /**
     * One row for each angle.
     *
     * @throws NoAnswerException if the elements touch
     */
    public static List<FlowRow> of(FlowRequest request) {
        try {
            return request.fluid() == FlowRequest.Fluid.IDEAL ? ideal(request) : viscous(request);
        } catch (NoFlowException e) {
            throw new NoAnswerException(Texts.of("section.no_flow", request.name(), String.valueOf(e.getMessage())));
        }
    }

    private static List<FlowRow> ideal(FlowRequest request) {
        IdealFlow flow = new IdealFlow(request.elements());
        List<FlowRow> rows = new ArrayList<>();
        for (double alpha : request.alphas()) {
            rows.add(row(request, alpha, flow.at(alpha), null));
        }
        return rows;
    }

    private static List<FlowRow> viscous(FlowRequest request) {
        ViscousFlow flow = new ViscousFlow(request.elements(), request.critical());
        List<FlowRow> rows = new ArrayList<>();
        ViscousPoint near = null;
        PastStall past = null;
        boolean isPastKnown = false;
        for (double alpha : request.alphas()) {
            ViscousAnswer answer = Math.abs(alpha) > FARTHEST ? null : flow.at(alpha, request.reynolds(), near);
            if (answer instanceof ViscousPoint point) {
                rows.add(row(request, alpha, point.surface(), point));
                near = point;
                continue;
            }
            if (!isPastKnown) {
                past = PastStall.of(request.elements(), flow, request.reynolds());
                isPastKnown = true;
            }
            rows.add(pastStall(alpha, past == null ? null : past.at(alpha)));
        }
        return rows;
    }

    private static FlowRow pastStall(double alpha, PastStall.@Nullable Coefficients there) {
        return there == null
                ? new FlowRow(alpha, Double.NaN, Double.NaN, Double.NaN, List.of(), Texts.of("section.no_agreement"))
                : new FlowRow(alpha, there.lift(), there.drag(), there.moment(), List.of(), null);
    }

    private static FlowRow row(FlowRequest request, double alpha, SurfaceFlow surface, @Nullable ViscousPoint point) {
        double lift = 0;
        double moment = 0;
        List<FlowRow.Element> elements = new ArrayList<>();
        double nose = nose(request.elements().get(0));
        for (int k = 0; k < surface.elements(); k++) {
            lift += surface.pressureLift(k);
            moment += surface.moment(k, nose + 0.25, 0);
            elements.add(element(request.elements().get(k), k, surface, point));
        }
        return new FlowRow(alpha, lift, point == null ? Double.NaN : point.drag(), moment, elements, null);
    }

    private static FlowRow.Element element(Contour contour, int k, SurfaceFlow surface, @Nullable ViscousPoint point) {
        double nose = nose(contour);
        double chord = contour.x(0) - nose;
        double[] places = {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
        if (point != null) {
            places[0] = (point.transition(k, LayerSide.UPPER) - nose) / chord;
            places[1] = (point.transition(k, LayerSide.LOWER) - nose) / chord;
            places[2] = (point.separation(k, LayerSide.UPPER) - nose) / chord;
            places[3] = (point.separation(k, LayerSide.LOWER) - nose) / chord;
        }
        return new FlowRow.Element(
                surface.pressureLift(k), surface.pressureRise(k), places[0], places[1], places[2], places[3]);
    }

    private static double nose(Contour contour) {
        double least = contour.x(0);
        for (int i = 0; i < contour.points(); i++) {
            least = Math.min(least, contour.x(i));
        }
        return least;
    }
}
