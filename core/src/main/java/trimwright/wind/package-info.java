/**
 * From a boat's recorded channels to one clock and the wind the boat sailed in. Start at
 * {@link trimwright.wind.SailedWind}, whose result is a {@link trimwright.wind.WindTrack}. Uses {@code units},
 * {@code air}, {@code boat} and {@code track}. Equations and choices: docs/theory/analysis.md.
 */
@NullMarked
package trimwright.wind;

import org.jspecify.annotations.NullMarked;
