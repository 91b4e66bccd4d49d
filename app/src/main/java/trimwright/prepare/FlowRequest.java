package trimwright.prepare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trimwright.boat.WingSpec;
import trimwright.profile.Contour;
import trimwright.profile.Naca;
import trimwright.profile.Outline;
import trimwright.profile.TrailingEdge;
import trimwright.profile.WingProfile;
import trimwright.section.SectionShape;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.wing.Wing;

/**
 * A section whose flow is to be computed from its outline.
 *
 * @param name as the person gave it
 * @param elements outlines, the chord that coefficients are on being 1: of the first, or a wing's total chord
 * @param alphas angles of attack (rad), rising
 * @param reynolds on that chord (-)
 * @param critical exponent of the largest wave at transition (-)
 * @param fluid with boundary layers or without
 */
public record FlowRequest(
        String name, List<Contour> elements, List<Double> alphas, double reynolds, double critical, Fluid fluid) {
    /** Panels of each element: at twice as many lift changes by less than 0.3 percent. */
    private static final int PANELS = 160;

    private static final String NACA = "naca";

    /** Of a wing's flap over its own chord (-), chosen: as wings are drawn. */
    private static final double FLAP_THICKNESS = 0.13;

    /** Pivot of a wing's flap over the main element's chord (-), chosen: the slot opens with flap angle. */
    private static final double PIVOT = 0.9;

    /** What flows. */
    public enum Fluid {
        VISCOUS,
        IDEAL
    }

    public FlowRequest {
        elements = List.copyOf(elements);
        alphas = List.copyOf(alphas);
    }

    /** The outline of a named aerofoil. */
    public static List<Contour> profile(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        Naca naca = lower.startsWith(NACA) ? Naca.find(lower.substring(NACA.length())) : null;
        if (naca == null) {
            throw new UserInputException(Texts.of("section.no_profile", name));
        }
        return List.of(naca.contour(PANELS, TrailingEdge.BLUNT));
    }

    /**
     * Main element and flap of a wing at a height, in a total chord of 1; what the boat file does not tell of the flap is chosen.
     *
     * @param heightRatio over the span, 0 to 1
     * @param flapAngle (rad)
     */
    public static List<Contour> boat(WingSpec wing, double heightRatio, double flapAngle) {
        SectionShape shape = Wing.shapeAt(wing, heightRatio * wing.span());
        if (!(shape.slotGapRatio() > 0)) {
            throw new UserInputException(Texts.of("section.no_slot", wing.id()));
        }
        return profileOf(shape).elements(flapAngle, PANELS, TrailingEdge.BLUNT);
    }

    /** Outlines of a section; what the boat file does not tell of the flap is chosen. */
    static WingProfile profileOf(SectionShape shape) {
        return new WingProfile(
                shape.thicknessRatio(), FLAP_THICKNESS, shape.flapChordRatio(), shape.slotGapRatio(), PIVOT);
    }

    /** Outlines from files, moved and scaled so that the chord of the first is 1. */
    public static List<Contour> coordinates(List<Path> files) {
        List<Outline> outlines = files.stream().map(OutlineFile::read).toList();
        double chord = outlines.get(0).chord();
        List<Contour> contours = new ArrayList<>();
        for (int i = 0; i < outlines.size(); i++) {
            try {
                contours.add(outlines.get(i).contour(PANELS).scaled(1 / chord));
            } catch (IllegalArgumentException e) {
                throw new UserInputException(
                        Texts.of("section.no_outline", files.get(i), String.valueOf(e.getMessage())), e);
            }
        }
        return contours;
    }
}
