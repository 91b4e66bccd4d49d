/**
 * The whole boat in steady sailing: forces and moments of all elements and their balance in six equations. Start at
 * {@link trimwright.platform.Platform}. Uses air, water, boat, section, wing, foil and hull.
 *
 * <p>Body axes: x forward, y to starboard, z down; origin at the bottom of the hulls, on the centreline, abeam of the main
 * foils' lift centre. A state is free of the tack; the side that the wind comes from is given beside it.
 */
@NullMarked
package trimwright.platform;

import org.jspecify.annotations.NullMarked;
