/**
 * Tables of text. Start at {@link trimwright.ingest.csv.CsvMapping}, which says what the columns of a file are, then
 * {@link trimwright.ingest.csv.CsvReader}.
 */
@NullMarked
package trimwright.ingest.csv;

import org.jspecify.annotations.NullMarked;
