/**
 * NMEA 0183. Bytes go through {@link trimwright.ingest.nmea.NmeaScanner} (lines and checksums), {@link
 * trimwright.ingest.nmea.NmeaSentence} (fields) and {@link trimwright.ingest.nmea.NmeaDecoder} (SI values); {@link
 * trimwright.ingest.nmea.NmeaReader} gathers a whole log. Nothing is allocated for a sentence.
 */
@NullMarked
package trimwright.ingest.nmea;

import org.jspecify.annotations.NullMarked;
