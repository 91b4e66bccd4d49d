package trimwright.prepare;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import trimwright.boat.WingSpec;
import trimwright.layer.ViscousFlow;
import trimwright.layer.ViscousPoint;
import trimwright.panel.NoFlowException;
import trimwright.panel.SurfaceFlow;
import trimwright.profile.Contour;
import trimwright.text.Texts;
import trimwright.units.Units;

/**
 * Pressure along the chord of a wing's sections, by the flow computed about each at the incidence, flap angle and Reynolds
 * number that the solved wing has there. The wing itself may be solved with other section curves: both lifts are told. Where
 * the boundary layers have no answer the ideal fluid's is given and says so.
 */
final class WingPressures {
    /** Lift coefficient under which a share of it says nothing; chosen. */
    private static final double LEAST_LIFT = 0.1;

    private WingPressures() {}

    /** One object for each strip. */
    static ArrayNode of(SolvedWing wing, int... strips) {
        ArrayNode sections = JsonNodeFactory.instance.arrayNode();
        for (int strip : strips) {
            put(sections.addObject(), wing, strip);
        }
        return sections;
    }

    private static void put(ObjectNode section, SolvedWing wing, int strip) {
        WingSpec spec = wing.spec();
        int tack = wing.state().tack();
        double height = wing.wing().stripHeight(strip);
        double alpha = tack * wing.flow().alpha(strip);
        double flap = tack * wing.flow().flapAngle(strip);
        double reynolds = wing.reynolds(strip);
        section.put("height_above_foot_m", height)
                .put("alpha_deg", Units.toDegrees(alpha))
                .put("flap_angle_deg", Units.toDegrees(flap))
                .put("reynolds", reynolds)
                .put("wing_lift_coefficient", tack * wing.flow().cl(strip));
        if (!(spec.slotGapRatio() > 0)) {
            section.put("reason", Texts.of("section.no_slot", spec.id()));
        } else if (!(reynolds > 0)) {
            section.put("reason", Texts.of("wing.pressure.still"));
        } else {
            putFlow(section, FlowRequest.boat(spec, height / spec.span(), flap), alpha, reynolds);
        }
    }

    private static void putFlow(ObjectNode section, List<Contour> elements, double alpha, double reynolds) {
        try {
            ViscousFlow flow = new ViscousFlow(elements, ViscousFlow.QUIET);
            if (flow.at(alpha, reynolds, null) instanceof ViscousPoint point) {
                putSurfaces(section, elements, point.surface(), FlowRequest.Fluid.VISCOUS);
                putLost(section, flow.ideal().at(alpha));
            } else {
                section.put("reason", Texts.of("wing.pressure.no_layers"));
                putSurfaces(section, elements, flow.ideal().at(alpha), FlowRequest.Fluid.IDEAL);
            }
        } catch (NoFlowException e) {
            section.put("reason", Texts.of("wing.pressure.none", String.valueOf(e.getMessage())));
        }
    }

    /** Share of the ideal fluid's lift that the layers take by what they displace. */
    private static void putLost(ObjectNode section, SurfaceFlow ideal) {
        double all = 0;
        for (int k = 0; k < ideal.elements(); k++) {
            all += ideal.pressureLift(k);
        }
        if (Math.abs(all) > LEAST_LIFT) {
            section.put("lift_lost_ratio", 1 - section.path("lift_coefficient").asDouble() / all);
        }
    }

    /** Points in the order trailing edge, suction side, nose, pressure side. */
    private static void putSurfaces(
            ObjectNode section, List<Contour> elements, SurfaceFlow flow, FlowRequest.Fluid fluid) {
        double lift = 0;
        ArrayNode all =
                section.put("fluid", fluid.name().toLowerCase(Locale.ROOT)).putArray("elements");
        for (int k = 0; k < elements.size(); k++) {
            lift += flow.pressureLift(k);
            ObjectNode element = all.addObject();
            ArrayNode x = element.putArray("x_ratio");
            ArrayNode pressure = element.putArray("pressure_coefficient");
            for (int i = 0; i < elements.get(k).points(); i++) {
                x.add(elements.get(k).x(i));
                pressure.add(flow.pressure(k, i));
            }
        }
        section.put("lift_coefficient", lift);
    }
}
