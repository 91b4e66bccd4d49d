/**
 * Calibrations at the edge: what is asked, what is said, what was accepted. Start at {@link trimwright.sensors.CalibrationRequest}; the solution itself is core's {@code calibration}. May use
 * {@code text}, {@code boatfile} and {@code store}.
 */
@NullMarked
package trimwright.sensors;

import org.jspecify.annotations.NullMarked;
