/**
 * How a boat on foils is kept at height, pitch and heel: laws that ask for accelerations and set rakes and elevators. Used by
 * whoever flies a boat of {@link trimwright.motion}, crews and the sailors of single questions alike. Start at {@link
 * trimwright.flight.LevelFlight}.
 */
@NullMarked
package trimwright.flight;

import org.jspecify.annotations.NullMarked;
