/**
 * The made weather of a simulated day: a wind field that moves over the course, the wakes of wings in it, a sea of short waves; and gusts as a
 * process ({@link trimwright.weather.FilteredGusts}). Start at {@link trimwright.weather.WindField}. Uses {@code chance}, {@code arithmetic},
 * {@code units} and {@code water}; what boats measure of it is another package's matter.
 *
 * <p>Places are metres north and east of the course's origin; velocities are those of the air, so that a northerly wind has
 * a negative north component.
 */
@NullMarked
package trimwright.weather;

import org.jspecify.annotations.NullMarked;
