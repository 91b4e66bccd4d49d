/**
 * How far below its limits a boat is sailed so that gusts seldom pass them: the aim of righting moment and sheet load. Start at
 * {@link trimwright.aim.AimFinder}; equations in docs/theory/aim.md. Works on solved targets. Uses {@code target}, the first
 * second of gusts of {@code card} and the spectra of {@code weather}. SI and radians.
 */
@NullMarked
package trimwright.aim;

import org.jspecify.annotations.NullMarked;
