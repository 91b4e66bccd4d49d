/**
 * Signal K deltas, one JSON text a line. Bytes go through {@link trimwright.ingest.signalk.DeltaScanner} (lines, JSON,
 * values in SI under their paths, the source of each update). {@link trimwright.ingest.signalk.DeltaLogReader} reads a
 * file, {@link trimwright.ingest.signalk.SignalKReader} a recording with times of arrival; both keep the sources apart in
 * the same way. The JSON reader is our own, as {@code core} has no library for it.
 */
@NullMarked
package trimwright.ingest.signalk;

import org.jspecify.annotations.NullMarked;
