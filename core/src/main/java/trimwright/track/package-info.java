/**
 * The waist of the program: time and named channels with unit and quality. Log, live stream and simulator all speak it.
 * Start at {@link trimwright.track.BoatTrack}; channel names are in {@link trimwright.track.Paths}. Uses {@code units}
 * only.
 */
@NullMarked
package trimwright.track;

import org.jspecify.annotations.NullMarked;
