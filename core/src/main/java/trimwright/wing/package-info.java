/**
 * The rigid wing in three dimensions: a nonlinear lifting line over the sea. Start at {@link trimwright.wing.Wing}: build
 * it once, place it over the water ({@link trimwright.wing.PlacedWing}), solve. Uses {@code air}, {@code boat} and
 * {@code section}. Theory: docs/theory/wing.md.
 *
 * <p>Frame: body axes x forward, y starboard, z down, origin at the wing's step (turning axis at the foot). Signed form:
 * sheet positive puts the trailing edge to port, flap angle positive puts the flap's trailing edge to starboard of the
 * main element's line, positive circulation lifts to port; all three are positive on starboard tack.
 */
@NullMarked
package trimwright.wing;

import org.jspecify.annotations.NullMarked;
