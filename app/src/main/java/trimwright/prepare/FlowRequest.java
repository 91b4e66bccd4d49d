package trimwright.prepare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trimwright.profile.Contour;
import trimwright.profile.Naca;
import trimwright.profile.Outline;
import trimwright.profile.TrailingEdge;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * A section whose flow is to be computed from its outline.
 *
 * @param name as the person gave it
 * @param elements outlines, the chord of the first one being 1
 * @param alphas angles of attack (rad), rising
 * @param reynolds on the chord of the first element (-)
 * @param critical exponent of the largest wave at transition (-)
 * @param fluid with boundary layers or without
 */
public record FlowRequest(
        String name, List<Contour> elements, List<Double> alphas, double reynolds, double critical, Fluid fluid) {
    /** Panels of each element: at twice as many lift changes by less than 0.3 percent. */
    private static final int PANELS = 160;

    private static final String NACA = "naca";

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
