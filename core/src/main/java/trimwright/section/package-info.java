/**
 * Two-dimensional flow about the two-element section: lift, drag, moments, stall and their derivatives. Start at
 * {@link trimwright.section.SectionModel}; {@link trimwright.section.ClosedFormSection} is what targets use,
 * {@link trimwright.section.ThinSection} the rung below it, {@link trimwright.section.SectionTable} tables of computed flow,
 * the rung above. All coefficients refer to the TOTAL chord, leading edge of the main element to trailing edge of the
 * straight flap. Theory: docs/theory/section.md, section-tables.md.
 */
@NullMarked
package trimwright.section;

import org.jspecify.annotations.NullMarked;
