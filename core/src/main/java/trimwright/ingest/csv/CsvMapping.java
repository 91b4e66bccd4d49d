package trimwright.ingest.csv;

import java.nio.charset.Charset;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a table of text holds ({@code csv-map/1}).
 *
 * @param text how it is written
 * @param headerRow row with the columns' names, counted from 1; 0 if there is none
 * @param skipRows rows before the first row of data, the header among them
 * @param timeColumns one column, or those of day and time, joined by a space
 * @param timeFormat see {@link CsvTimeFormat#find}
 * @param zone in which times without a zone are
 * @param boat column with the boat's name, or null
 * @param columns what is read
 */
public record CsvMapping(
        TextForm text,
        int headerRow,
        int skipRows,
        List<CsvSelector> timeColumns,
        String timeFormat,
        ZoneId zone,
        @Nullable CsvSelector boat,
        List<CsvColumn> columns) {
    /**
     * How a table is written.
     *
     * @param charset one in which delimiters and digits are those of ASCII
     * @param delimiter between cells
     * @param point before decimals
     * @param group name of the group that its channels become
     */
    public record TextForm(Charset charset, char delimiter, char point, String group) {}

    public CsvMapping {
        timeColumns = List.copyOf(timeColumns);
        columns = List.copyOf(columns);
        if (columns.isEmpty() || timeColumns.isEmpty()) {
            throw new IllegalArgumentException("a mapping names a time and a column");
        }
        if (headerRow < 0 || skipRows < headerRow) {
            throw new IllegalArgumentException("header row " + headerRow + ", " + skipRows + " rows skipped");
        }
        if (CsvTimeFormat.find(timeFormat, zone) == null) {
            throw new IllegalArgumentException("time format " + timeFormat);
        }
    }
}
