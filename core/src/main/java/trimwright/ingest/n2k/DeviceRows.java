package trimwright.ingest.n2k;

import java.util.Arrays;
import trimwright.ingest.DoubleList;
import trimwright.ingest.LongList;

/** All messages of one device and layout, in order of arrival, before their times are known. */
final class DeviceRows {
    private final int device;
    private final N2kLayout layout;
    private final LongList positions = new LongList();
    private final LongList lines = new LongList();
    private final LongList marks = new LongList();
    private final DoubleList[] values;

    DeviceRows(int device, N2kLayout layout) {
        this.device = device;
        this.layout = layout;
        values = new DoubleList[layout.paths().size()];
        Arrays.setAll(values, i -> new DoubleList());
    }

    boolean isOf(int otherDevice, N2kLayout otherLayout) {
        return device == otherDevice && layout == otherLayout;
    }

    N2kLayout layout() {
        return layout;
    }

    /** For names of groups: {@code n2k-wind-apparent-115}, with the device's address on the bus. */
    String name() {
        return "n2k-" + layout.word() + "-" + device;
    }

    /** @param mark number of the line's own clock mark, -1 without one */
    void add(long position, long line, long mark, N2kDecoder message) {
        positions.add(position);
        lines.add(line);
        marks.add(mark);
        for (int i = 0; i < values.length; i++) {
            values[i].add(message.value(i));
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

    int mark(int i) {
        return (int) marks.get(i);
    }

    double value(int path, int i) {
        return values[path].get(i);
    }
}
