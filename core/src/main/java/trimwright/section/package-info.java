/**
 * Two-dimensional flow about the two-element section: lift, drag, moments, stall and their derivatives. Start at
 * {@link trimwright.section.SectionModel}; {@link trimwright.section.ClosedFormSection} is what targets use,
 * {@link trimwright.section.ThinSection} the rung below it. All coefficients refer to the TOTAL chord, leading edge of
 * the main element to trailing edge of the straight flap. Theory: docs/theory/section.md.
 */
@NullMarked
package trimwright.section;

import org.jspecify.annotations.NullMarked;
