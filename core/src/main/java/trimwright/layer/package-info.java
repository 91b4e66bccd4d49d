/**
 * Boundary layers and wakes of a section and what they do to the flow outside: displacement, drag, transition, separation,
 * maximum lift. Start at {@link trimwright.layer.ViscousFlow}. May use {@code arithmetic}, {@code profile} and {@code panel}. Theory:
 * docs/theory/section-flow.md.
 */
@NullMarked
package trimwright.layer;

import org.jspecify.annotations.NullMarked;
