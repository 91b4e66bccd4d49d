package trimwright.wing;

import org.jspecify.annotations.Nullable;
import trimwright.boat.FootPlate;
import trimwright.boat.WingSpec;
import trimwright.boat.WingStation;
import trimwright.section.SectionFamily;
import trimwright.section.SectionModel;
import trimwright.section.SectionShape;

/**
 * A rigid wing cut into strips, cosine-spaced between foot and head. Built once from its description; all that does not depend on heel, height,
 * wind or trim is computed here. Place it over the water to solve.
 *
 * <p>The lifting line is the straight turning axis; forces act there, sections add their couple about it. Chord and
 * thickness run straight between stations. Left out: sweep, bending, the platform's own flow under the foot.
 */
public final class Wing {
    private final double span;
    private final double area;
    private final double flapChordRatio;
    private final double[] node;
    private final double[] height;
    private final double[] chord;
    private final double[] width;
    private final SectionModel[] section;
    private final double[][] leg;
    private final FlapLayout flap;
    private final @Nullable FootPlate footPlate;

    private Wing(WingSpec spec, SectionFamily family, int strips) {
        if (strips < 4 || strips > 400) {
            throw new IllegalArgumentException("a wing is cut into 4 to 400 strips, not " + strips);
        }
        span = spec.span();
        area = area(spec);
        flapChordRatio = spec.flapChordRatio();
        footPlate = spec.footPlate();
        node = new double[strips + 1];
        height = new double[strips];
        chord = new double[strips];
        width = new double[strips];
        section = new SectionModel[strips];
        flap = FlapLayout.of(spec.flapPanels(), span, strips);
        for (int k = 0; k <= strips; k++) {
            node[k] = flap.nodeHeight(k);
        }
        for (int i = 0; i < strips; i++) {
            height[i] = flap.stripHeight(i);
            width[i] = node[i + 1] - node[i];
            chord[i] = stationAt(spec, height[i]).chord();
            section[i] = family.sectionOf(shapeAt(spec, height[i]));
        }
        leg = Rows.of(strips + 1, strips);
        for (int k = 0; k <= strips; k++) {
            for (int i = 0; i < strips; i++) {
                leg[k][i] = 1 / (4 * Math.PI * (node[k] - height[i]));
            }
        }
    }

    /** A wing with the given sections, cut into strips (20 to 40 serve; 4 to 400 are accepted). */
    public static Wing of(WingSpec spec, SectionFamily family, int strips) {
        return new Wing(spec, family, strips);
    }

    /** A wing with closed-form two-element sections. */
    public static Wing of(WingSpec spec, int strips) {
        return new Wing(spec, SectionFamily.closedForm(aspectRatio(spec)), strips);
    }

    /** Area between foot and head (m2). */
    public static double area(WingSpec spec) {
        double sum = 0;
        for (int k = 1; k < spec.stations().size(); k++) {
            WingStation low = spec.stations().get(k - 1);
            WingStation high = spec.stations().get(k);
            sum += 0.5 * (low.chord() + high.chord()) * (high.height() - low.height());
        }
        return sum;
    }

    /** Span squared over area (-). */
    public static double aspectRatio(WingSpec spec) {
        return spec.span() * spec.span() / area(spec);
    }

    /** Shape of the section at a height above the foot (m). */
    public static SectionShape shapeAt(WingSpec spec, double height) {
        return new SectionShape(
                spec.flapChordRatio(),
                spec.turningAxisRatio(),
                spec.slotGapRatio(),
                stationAt(spec, height).thicknessRatio());
    }

    /**
     * The wing over the sea.
     *
     * @param heel signed roll, starboard down (rad), -1.4 to 1.4
     * @param footHeight height of the foot above the water (m), positive; less than it is where a deck seals the gap
     */
    public PlacedWing placedAt(double heel, double footHeight) {
        return PlacedWing.overSea(this, heel, footHeight);
    }

    /** The wing with no sea near: tests and comparisons. */
    public PlacedWing inFreeAir() {
        return PlacedWing.inFreeAir(this);
    }

    public int strips() {
        return height.length;
    }

    /** Foot to head (m). */
    public double span() {
        return span;
    }

    /** Total-chord area (m2). */
    public double area() {
        return area;
    }

    /** Height of a strip's middle above the foot, along the span (m). */
    public double stripHeight(int strip) {
        return height[strip];
    }

    /** Total chord at a strip (m). */
    public double stripChord(int strip) {
        return chord[strip];
    }

    /** Extent of a strip along the span (m). */
    public double stripWidth(int strip) {
        return width[strip];
    }

    /** Chord of the flap over total chord, the same at every height (-). */
    double flapChordRatio() {
        return flapChordRatio;
    }

    /** Panels that the flap is made of, counted from the foot. */
    public int flapPanels() {
        return flap.panels();
    }

    /** Panel of the flap that a strip belongs to. */
    public int flapPanel(int strip) {
        return flap.panel(strip);
    }

    @Nullable
    FootPlate footPlate() {
        return footPlate;
    }

    /** Sum of the values of a panel's strips. */
    double sumOfPanel(int panel, double[] values) {
        double sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += flap.panel(i) == panel ? values[i] : 0;
        }
        return sum;
    }

    /** Share of the span, 0 at the foot to 1 at the head, whose flap angle a strip has (-). */
    public double flapShare(int strip) {
        return flap.share(strip);
    }

    SectionModel section(int strip) {
        return section[strip];
    }

    double node(int k) {
        return node[k];
    }

    /** Heights of the strips' middles, not to be changed. */
    double[] stripHeights() {
        return height;
    }

    /** 1/(4 pi (node - strip)) of a node and each strip. */
    double[] legs(int k) {
        return leg[k];
    }

    /** Chord and thickness at a height above the foot (m), straight between stations. */
    public static WingStation stationAt(WingSpec spec, double height) {
        int k = 1;
        while (k < spec.stations().size() - 1 && spec.stations().get(k).height() < height) {
            k++;
        }
        WingStation low = spec.stations().get(k - 1);
        WingStation high = spec.stations().get(k);
        double share = (height - low.height()) / (high.height() - low.height());
        return new WingStation(
                height,
                low.chord() + share * (high.chord() - low.chord()),
                low.thicknessRatio() + share * (high.thicknessRatio() - low.thicknessRatio()));
    }
}
