package trimwright.ingest.csv;

import org.jspecify.annotations.Nullable;

/** One column of a table: by the name in its header, or by its place. */
public record CsvSelector(@Nullable String name, int index) {
    public static CsvSelector named(String name) {
        return new CsvSelector(name, 0);
    }

    /** @param index counted from 1 */
    public static CsvSelector at(int index) {
        if (index < 1) {
            throw new IllegalArgumentException("columns count from 1: " + index);
        }
        return new CsvSelector(null, index);
    }
}
