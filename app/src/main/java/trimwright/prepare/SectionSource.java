package trimwright.prepare;

/** Where lift, drag and stall of a wing's sections come from. */
public enum SectionSource {
    /** Smooth formulas: {@link trimwright.section.ClosedFormSection}. */
    CLOSED_FORM("closed_form"),
    /** Tables of computed flow: {@link trimwright.section.SectionTable}. */
    COMPUTED("computed");

    private final String key;

    SectionSource(String key) {
        this.key = key;
    }

    /** Name in documents. */
    public String key() {
        return key;
    }
}
