/**
 * Outlines of aerofoils and of sections of several elements: NACA families, measured coordinates, the wing's main element
 * with its flap. Start at {@link trimwright.profile.Contour}; it is what the flow is computed about. May use nothing else
 * of ours. Theory: docs/theory/section-flow.md.
 */
@NullMarked
package trimwright.profile;

import org.jspecify.annotations.NullMarked;
