package trimwright.web;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import trimwright.boat.WingSpec;
import trimwright.boat.WingStation;
import trimwright.prepare.WingCut;
import trimwright.wing.Wing;

/**
 * Outlines of a wing as it is set, for drawing only: nothing is computed from them.
 *
 * <p>Sections are seen from above about the turning axis, forward and starboard, with the wind from starboard: eased, the
 * trailing edge goes to port, and the flap's trailing edge bends back to starboard. The thickness is that of the NACA
 * four-digit series; where the flap turns, its thickness and the slot are chosen to look right, as a boat file does not
 * say them.
 */
final class WingShape {
    /** Points from leading to trailing edge; chosen so that no corner shows. */
    private static final int POINTS = 24;
    /** Thickness of the flap over its own chord (-), chosen. */
    private static final double FLAP_THICKNESS = 0.13;

    private final WingSpec wing;

    WingShape(WingSpec wing) {
        this.wing = wing;
    }

    /** A place on the paper's plane (m): forward of the turning axis, and starboard of it or above the foot. */
    record Spot(double forward, double across) {}

    /**
     * One section.
     *
     * @param height above the foot (m)
     * @param chord total chord (m)
     * @param flapAngle to the main element (rad)
     */
    record Section(double height, double chord, double flapAngle, List<Spot> main, List<Spot> flap) {}

    /** The main element seen from abeam, forward and up. */
    List<Spot> mainFromAbeam() {
        return strip(0, mainEnd());
    }

    /** The flap seen from abeam, straight behind the main element. */
    List<Spot> flapFromAbeam() {
        return strip(mainEnd() + wing.slotGapRatio(), 1);
    }

    private double mainEnd() {
        return 1 - wing.flapChordRatio() - wing.slotGapRatio();
    }

    private List<Spot> strip(double from, double to) {
        List<Spot> outline = new ArrayList<>();
        for (WingStation station : wing.stations()) {
            outline.add(new Spot((wing.turningAxisRatio() - from) * station.chord(), station.height()));
        }
        List<WingStation> down = new ArrayList<>(wing.stations());
        Collections.reverse(down);
        for (WingStation station : down) {
            outline.add(new Spot((wing.turningAxisRatio() - to) * station.chord(), station.height()));
        }
        return outline;
    }

    /** The section at a place, the wing turned by the sheet angle (rad). */
    Section section(WingCut cut, double sheet) {
        double flapAngle = cut.flapAngle();
        WingStation at = Wing.stationAt(wing, cut.height());
        double chord = at.chord();
        double mainChord = mainEnd() * chord;
        double flapChord = wing.flapChordRatio() * chord;
        double axis = wing.turningAxisRatio() * chord;
        List<Spot> main = new ArrayList<>();
        for (double[] p : outline(mainChord, at.thicknessRatio())) {
            main.add(turned(p[0] - axis, p[1], sheet));
        }
        double flapStart = mainChord + wing.slotGapRatio() * chord;
        List<Spot> flap = new ArrayList<>();
        for (double[] p : outline(flapChord, FLAP_THICKNESS)) {
            double aft = flapStart + p[0] * StrictMath.cos(flapAngle) - p[1] * StrictMath.sin(flapAngle);
            double starboard = p[0] * StrictMath.sin(flapAngle) + p[1] * StrictMath.cos(flapAngle);
            flap.add(turned(aft - axis, starboard, sheet));
        }
        return new Section(cut.height(), chord, flapAngle, main, flap);
    }

    /** A spot of the wing at sheet zero (aft of the axis, starboard), turned so that the trailing edge goes to port. */
    private static Spot turned(double aft, double starboard, double sheet) {
        return new Spot(
                -(aft * StrictMath.cos(sheet) + starboard * StrictMath.sin(sheet)),
                starboard * StrictMath.cos(sheet) - aft * StrictMath.sin(sheet));
    }

    /** Aft of the leading edge and to one side (m): out along one side, back along the other. */
    private static List<double[]> outline(double chord, double thicknessRatio) {
        List<double[]> points = new ArrayList<>();
        for (int i = -POINTS; i <= POINTS; i++) {
            double x = 0.5 * (1 + StrictMath.cos(Math.PI * i / POINTS));
            double y = Math.copySign(halfThickness(x, thicknessRatio), i);
            points.add(new double[] {x * chord, y * chord});
        }
        return points;
    }

    /** NACA four-digit thickness (Jacobs, Ward and Pinkerton, NACA Report 460, 1933), half, over the chord. */
    private static double halfThickness(double x, double ratio) {
        return ratio
                / 0.20
                * (0.29690 * Math.sqrt(x)
                        - 0.12600 * x
                        - 0.35160 * x * x
                        + 0.28430 * x * x * x
                        - 0.10150 * x * x * x * x);
    }
}
