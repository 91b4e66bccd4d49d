/**
 * The boat as a crew can describe it: geometry, masses, places, limits. Start at {@link trimwright.boat.Boat}. Values
 * only, no physics, no file format; uses {@code units} only.
 *
 * <p>Places are in the boat's own measuring frame: x forward of the main foils' lift centre, y from the centreline
 * (positive outward, free of the tack), height upward from the bottom of the hulls. All SI and radians.
 */
@NullMarked
package trimwright.boat;

import org.jspecify.annotations.NullMarked;
