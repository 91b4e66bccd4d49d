package trimwright.ingest.nmea;

import java.util.Arrays;
import trimwright.ingest.DoubleList;
import trimwright.ingest.LongList;

/** All readings of one talker and layout, in order of arrival, before their times are known. */
final class SourceRows {
    private static final long NO_MARK = -1;

    private final int talker;
    private final NmeaLayout layout;
    private final LongList positions = new LongList();
    private final LongList lines = new LongList();
    private final LongList marks = new LongList();
    private final DoubleList[] values;

    SourceRows(int talker, NmeaLayout layout) {
        this.talker = talker;
        this.layout = layout;
        values = new DoubleList[layout.paths().size()];
        Arrays.setAll(values, i -> new DoubleList());
    }

    boolean isOf(int otherTalker, NmeaLayout otherLayout) {
        return talker == otherTalker && layout == otherLayout;
    }

    NmeaLayout layout() {
        return layout;
    }

    /** For names of groups: {@code ii-mwv-r}. */
    String name() {
        String letters = "" + (char) (talker >> 8) + (char) (talker & 0xff);
        return letters.toLowerCase(java.util.Locale.ROOT) + "-" + layout.word();
    }

    /** Whether the talker is a program: CC is the standard's computed talker, CM its memory (from memory). */
    boolean isComputed() {
        return talker == ('C' << 8 | 'C') || talker == ('C' << 8 | 'M');
    }

    /** @param mark number of the reading's own clock mark, -1 without one */
    void add(long position, long line, long mark, NmeaReading reading) {
        positions.add(position);
        lines.add(line);
        marks.add(mark);
        for (int i = 0; i < values.length; i++) {
            values[i].add(reading.value(i));
        }
    }

    int size() {
        return positions.size();
    }

    long position(int i) {
        return positions.get(i);
    }

    long line(int i) {
        return lines.get(i);
    }

    boolean hasMark(int i) {
        return marks.get(i) != NO_MARK;
    }

    int mark(int i) {
        return (int) marks.get(i);
    }

    double value(int path, int i) {
        return values[path].get(i);
    }
}
