/**
 * The boat in time: surge, sway, heave, roll, pitch and yaw under the forces of wing, foils, rudders, hulls and windage; controls
 * that need time to move. Start at {@link trimwright.motion.MotionModel}. Uses the force models of {@code wing}, {@code
 * foil} and {@code hull} as they stand; knows no crew and no course.
 *
 * <p>Signed form throughout: see {@link trimwright.motion.Controls}. Earth axes north, east, down; body axes x forward, y
 * to starboard, z down, origin at the bottom of the hulls, on the centreline, at the main foils' lift centre; level axes
 * share the heading and lie flat.
 */
@NullMarked
package trimwright.motion;

import org.jspecify.annotations.NullMarked;
