package trimwright.prepare;

import trimwright.boat.WingSpec;
import trimwright.section.SectionFamily;
import trimwright.wing.Wing;

/**
 * A wing's sections, ready to be asked.
 *
 * @param source where they come from
 * @param family gives the section of each shape along the wing
 */
public record Sections(SectionSource source, SectionFamily family) {
    /** A wing's sections in closed form. */
    public static Sections closedForm(WingSpec wing) {
        return new Sections(SectionSource.CLOSED_FORM, SectionFamily.closedForm(Wing.aspectRatio(wing)));
    }
}
