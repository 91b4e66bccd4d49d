package trimwright.ingest.nmea;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.Sampled;
import trimwright.ingest.Timeline;

/**
 * Rows of one talker and layout that bring their own times, split by device: two receivers that one talker sends in turn
 * make the time run to and fro. A row goes to the device whose last time is nearest before its own; a row that no device
 * can take begins another, up to {@value #MOST}.
 *
 * <p>A device is real if it lies behind the newest time in most of its rows and has a tenth of the rows of the fullest,
 * or if it has half of them. What is left is a receiver that wrote the same second twice (chosen).
 */
final class DeviceSplit {
    private static final int MOST = 4;
    private static final int SHARE_BEHIND = 10;
    private static final int SHARE = 2;
    private static final int LEAST_ROWS = 5;

    private final SourceRows rows;
    private final LogTimes times;
    private final Issues issues;
    private final List<Device> devices = new ArrayList<>();
    private final double[] values;
    private int stretch = -1;

    private static final class Device {
        private final Sampled samples;
        private long last = Long.MIN_VALUE;
        private int behind;

        Device(SourceRows rows) {
            samples = new Sampled(rows.layout().paths());
        }
    }

    private DeviceSplit(SourceRows rows, LogTimes times, Issues issues) {
        this.rows = rows;
        this.times = times;
        this.issues = issues;
        values = new double[rows.layout().paths().size()];
    }

    /** One for each device, the fullest first; empty where no row has a time. */
    static List<Sampled> of(SourceRows rows, LogTimes times, Issues issues, Set<IngestNote> notes) {
        DeviceSplit split = new DeviceSplit(rows, times, issues);
        for (int i = 0; i < rows.size(); i++) {
            split.add(i);
        }
        List<Sampled> found = split.real();
        if (found.size() > 1) {
            notes.add(IngestNote.DEVICES_INTERLEAVED);
        }
        return found;
    }

    private void add(int row) {
        long time = times.of(rows, row);
        if (time == Timeline.NONE) {
            return;
        }
        if (times.stretch(rows, row) != stretch) {
            stretch = times.stretch(rows, row);
            devices.forEach(device -> device.last = Long.MIN_VALUE);
        }
        Arrays.setAll(values, path -> rows.value(path, row));
        Device taker = null;
        boolean behind = false;
        for (Device device : devices) {
            if (device.last == time && device.samples.isSame(device.samples.size() - 1, values)) {
                issues.add(IssueKind.REPEAT, rows.line(row), rows.name());
                return;
            }
            behind |= device.last > time;
            if (device.last < time && (taker == null || device.last > taker.last)) {
                taker = device;
            }
        }
        if (taker == null && devices.size() == MOST) {
            issues.add(IssueKind.TIME_NOT_RISING, rows.line(row), rows.name());
            return;
        }
        if (taker == null) {
            taker = new Device(rows);
            devices.add(taker);
        }
        taker.behind += behind ? 1 : 0;
        taker.last = time;
        taker.samples.begin(time, rows.line(row), Sampled.TimeOrigin.LOG);
        for (int path = 0; path < values.length; path++) {
            taker.samples.put(path, values[path]);
        }
    }

    private List<Sampled> real() {
        List<Device> sorted = new ArrayList<>(devices);
        sorted.sort((a, b) -> Integer.compare(b.samples.size(), a.samples.size()));
        List<Sampled> kept = new ArrayList<>();
        for (Device device : sorted) {
            if (kept.isEmpty() || isReal(device, kept.get(0))) {
                kept.add(device.samples);
            } else {
                for (int i = 0; i < device.samples.size(); i++) {
                    issues.add(IssueKind.TIME_NOT_RISING, device.samples.line(i), rows.name());
                }
            }
        }
        return kept;
    }

    private static boolean isReal(Device device, Sampled fullest) {
        int size = device.samples.size();
        int share = 2 * device.behind > size ? SHARE_BEHIND : SHARE;
        return size >= LEAST_ROWS && share * size >= fullest.size();
    }
}
