/**
 * Ideal flow about any number of elements: vorticity that varies linearly along straight panels, a Kutta condition at each
 * trailing edge. Start at {@link trimwright.panel.IdealFlow}. May use {@code arithmetic} and {@code profile}. Theory: docs/theory/section-flow.md.
 */
@NullMarked
package trimwright.panel;

import org.jspecify.annotations.NullMarked;
