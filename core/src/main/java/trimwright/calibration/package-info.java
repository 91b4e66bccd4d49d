/**
 * What a boat's instruments read wrongly, solved together from a session's straight sailing, with standard errors; and
 * tracks with it taken off. Start at {@link trimwright.calibration.Calibrations}. Uses {@code units}, {@code air}, {@code
 * boat}, {@code track}, {@code wind}, {@code wing} and {@code dock} (what a dock check knows beforehand). Equations and
 * choices: docs/theory/analysis.md, "Calibration".
 */
@NullMarked
package trimwright.calibration;

import org.jspecify.annotations.NullMarked;
