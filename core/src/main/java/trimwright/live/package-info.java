/**
 * A boat as it sails: the debrief's derivations in one pass and bounded memory. Values go into a {@link
 * trimwright.live.LiveBoat}, which gives {@link trimwright.live.LiveFigures}; {@link trimwright.live.StreamDecoder} makes
 * values of bytes. Time is that of arrival by a clock that never steps; it comes with the data. Uses {@code units},
 * {@code air}, {@code boat}, {@code track}, {@code ingest}, {@code wind}, {@code segment}, {@code target}, {@code aim} and {@code response}. No advice is
 * given here. Choices: docs/theory/analysis.md, "Live".
 */
@NullMarked
package trimwright.live;

import org.jspecify.annotations.NullMarked;
