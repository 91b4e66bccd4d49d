package trimwright.ingest.csv;

/**
 * What a column holds.
 *
 * @param selector which column
 * @param path of the channel that it becomes
 * @param unit that its numbers are in
 * @param sense whether its sign is that of the channel
 */
public record CsvColumn(CsvSelector selector, String path, CsvUnit unit, Sense sense) {
    /** Sign of a column against that of its channel. */
    public enum Sense {
        SAME,
        OPPOSITE
    }

    double toSi(double value) {
        return unit.toSi(sense == Sense.OPPOSITE ? -value : value);
    }
}
