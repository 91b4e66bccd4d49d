package trimwright.section;

/** Gives the section model of each shape along a wing. */
@FunctionalInterface
public interface SectionFamily {
    SectionModel sectionOf(SectionShape shape);

    /**
     * The closed form, its separated part relieved for a wing of this aspect ratio (span squared over area).
     */
    static SectionFamily closedForm(double aspectRatio) {
        SectionTuning tuning = SectionTuning.DEFAULT.withPlateDrag(Plate.dragAbeam(aspectRatio));
        return shape -> new ClosedFormSection(shape, tuning);
    }
}
