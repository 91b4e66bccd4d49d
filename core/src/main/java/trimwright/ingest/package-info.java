/**
 * Readers: bytes of a log in, tracks and findings out; pure, so that files, sockets and live streams are all the same to
 * them. Start at {@link trimwright.ingest.IngestResult}, then {@link trimwright.ingest.nmea.NmeaReader} and
 * {@link trimwright.ingest.csv.CsvReader}. The rules for time are in docs/theory/ingest.md. May use {@code units} and
 * {@code track}.
 */
@NullMarked
package trimwright.ingest;

import org.jspecify.annotations.NullMarked;
