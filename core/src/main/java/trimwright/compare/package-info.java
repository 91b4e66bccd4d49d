/**
 * How a boat did against a reference: speed made good in each phase with an interval, and where the seconds of a leg
 * went. Start at {@link trimwright.compare.Comparison}. Pure functions over a {@link trimwright.wind.WindTrack} and its
 * {@link trimwright.segment.Pieces}; rules: docs/theory/analysis.md. Uses {@code target} and
 * {@code platform}, {@code wind}, {@code segment}, {@code course}, {@code boat}, {@code air} and {@code units}; never the simulator.
 */
@NullMarked
package trimwright.compare;

import org.jspecify.annotations.NullMarked;
