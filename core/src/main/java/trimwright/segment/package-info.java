/**
 * Cuts a sailed day into pieces: turns, legs, phases, spells off the foils. Start at
 * {@link trimwright.segment.Cutting}. Pure functions over a {@link trimwright.wind.WindTrack}; rules and their chosen
 * numbers: docs/theory/analysis.md, "The day cut up". Uses {@code units} and {@code wind}.
 */
@NullMarked
package trimwright.segment;

import org.jspecify.annotations.NullMarked;
