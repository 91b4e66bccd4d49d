/**
 * Reader of NMEA 2000 as loggers write it in text: frames of a bus, a line each, in the four spellings that
 * docs/formats.md names. Start at {@link trimwright.ingest.n2k.N2kReader}. May use {@code ingest}, {@code units} and
 * {@code track}.
 */
@NullMarked
package trimwright.ingest.n2k;

import org.jspecify.annotations.NullMarked;
