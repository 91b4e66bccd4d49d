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
 * can take begins another, up to {@value #MOST}. A device with fewer than a tenth of the rows of the fullest is noise.
 */
final class DeviceSplit {
    private static final int MOST = 4;
    private static final int SHARE = 10;
    private static final int LEAST_ROWS = 5;

    private final SourceRows rows;
    private final LogTimes times;
    private final Issues issues;
    private final List<Sampled> devices = new ArrayList<>();
    private final List<Long> lastTimes = new ArrayList<>();
    private final double[] values;
    private int stretch = -1;

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
        List<Sampled> found = split.significant();
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
            lastTimes.replaceAll(last -> Long.MIN_VALUE);
        }
        Arrays.setAll(values, path -> rows.value(path, row));
        int best = -1;
        for (int d = 0; d < devices.size(); d++) {
            if (lastTimes.get(d) == time && devices.get(d).isSame(devices.get(d).size() - 1, values)) {
                issues.add(IssueKind.REPEAT, rows.line(row), rows.name());
                return;
            }
            if (lastTimes.get(d) < time && (best < 0 || lastTimes.get(d) > lastTimes.get(best))) {
                best = d;
            }
        }
        if (best < 0 && devices.size() == MOST) {
            issues.add(IssueKind.TIME_NOT_RISING, rows.line(row), rows.name());
            return;
        }
        if (best < 0) {
            best = devices.size();
            devices.add(new Sampled(rows.layout().paths()));
            lastTimes.add(time);
        }
        lastTimes.set(best, time);
        Sampled device = devices.get(best);
        device.begin(time, rows.line(row), Sampled.TimeOrigin.LOG);
        for (int path = 0; path < values.length; path++) {
            device.put(path, values[path]);
        }
    }

    private List<Sampled> significant() {
        List<Sampled> sorted = new ArrayList<>(devices);
        sorted.sort((a, b) -> Integer.compare(b.size(), a.size()));
        List<Sampled> kept = new ArrayList<>();
        for (Sampled device : sorted) {
            if (kept.isEmpty()
                    || (device.size() >= LEAST_ROWS
                            && SHARE * device.size() >= kept.get(0).size())) {
                kept.add(device);
            } else {
                for (int i = 0; i < device.size(); i++) {
                    issues.add(IssueKind.TIME_NOT_RISING, device.line(i), rows.name());
                }
            }
        }
        return kept;
    }
}
