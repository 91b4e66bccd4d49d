package trimwright.section;

/**
 * Numbers of the closed form that come from measurements or better computations rather than from theory. How each was
 * found: docs/theory/section.md.
 *
 * @param viscousLoss share of ideal lift that the boundary layers cost while attached (-): 0.08 from the NLR 7301 test
 * @param plateDrag drag of the separated section abeam (-): 1.98 for a plate of endless span (Hoerner)
 */
public record SectionTuning(double viscousLoss, double plateDrag) {
    /** Two-dimensional flow, NLR 7301's viscous loss. */
    public static final SectionTuning DEFAULT = new SectionTuning(0.08, Plate.DRAG_ABEAM_2D);

    public SectionTuning {
        if (!(viscousLoss >= 0 && viscousLoss <= 0.3) || !(plateDrag > 0 && plateDrag <= 2.5)) {
            throw new IllegalArgumentException(
                    "tuning needs viscous loss 0-0.3 and plate drag 0-2.5, not " + viscousLoss + ", " + plateDrag);
        }
    }

    /** The same with another drag abeam (-). */
    public SectionTuning withPlateDrag(double drag) {
        return new SectionTuning(viscousLoss, drag);
    }

    /** The same with another viscous loss (-). */
    public SectionTuning withViscousLoss(double loss) {
        return new SectionTuning(loss, plateDrag);
    }
}
