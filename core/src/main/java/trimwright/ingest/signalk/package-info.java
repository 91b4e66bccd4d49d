/**
 * Signal K deltas, one JSON text a line. Bytes go through {@link trimwright.ingest.signalk.DeltaScanner} (lines, JSON,
 * values in SI under their paths); {@link trimwright.ingest.signalk.SignalKReader} gathers a whole recording. The JSON
 * reader is our own, as {@code core} has no library for it.
 */
@NullMarked
package trimwright.ingest.signalk;

import org.jspecify.annotations.NullMarked;
