package trimwright.ingest.csv;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.DecimalText;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IngestReport;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.LogReader;
import trimwright.ingest.TimeText;
import trimwright.track.BoatTrack;
import trimwright.track.ChannelRule;

/**
 * A whole table of text, given in pieces of any size. A cell that is empty or says that there is no value is absent; one
 * that should be a number and is not is absent and counted; a row without a readable time is left out and counted.
 */
public final class CsvReader implements LogReader, CsvRecords.Sink {
    private static final List<String> ABSENT = List.of("nan", "null", "na", "n/a", "-", "--", "none");

    private final CsvMapping mapping;
    private final String defaultBoat;
    private final @Nullable Long start;
    private final Issues issues = new Issues();
    private final CsvRecords records;
    private final CsvTimeFormat timeFormat;
    private final ChannelRule[] rules;
    private final byte point;

    private final List<BoatRows> boats = new ArrayList<>();
    private int @Nullable [] columns;
    private int[] timeColumns = new int[0];
    private int boatColumn = -1;
    private int lastColumn;
    private final byte[] joined = new byte[256];
    private long rows;
    private long usable;
    private IngestResult.@Nullable NoColumn noColumn;

    /**
     * @param boat name for a table without a column of boats
     * @param startNanos ns since 1970 UTC, for times without a date, or null
     */
    public CsvReader(CsvMapping mapping, String boat, @Nullable Long startNanos) {
        this.mapping = mapping;
        this.defaultBoat = boat;
        this.start = startNanos;
        records = new CsvRecords(mapping.text().delimiter(), issues, this);
        timeFormat = Objects.requireNonNull(CsvTimeFormat.find(mapping.timeFormat(), mapping.zone()));
        point = (byte) mapping.text().point();
        rules = mapping.columns().stream()
                .map(column -> ChannelRule.of(column.path()))
                .toArray(ChannelRule[]::new);
    }

    /** Reads a table that is at hand as a whole. */
    public static IngestResult read(byte[] table, CsvMapping mapping, String boat, @Nullable Long startNanos) {
        CsvReader reader = new CsvReader(mapping, boat, startNanos);
        reader.accept(table, 0, table.length);
        return reader.finish();
    }

    @Override
    public void accept(byte[] bytes, int from, int to) {
        records.accept(bytes, from, to);
    }

    @Override
    public void take(CsvRecords row, long line) {
        rows++;
        if (rows == mapping.headerRow()) {
            columns = findColumns(row);
        } else if (rows > mapping.skipRows() && row.cells() > 0 && noColumn == null) {
            if (columns == null) {
                columns = findColumns(row);
            }
            takeData(row, line, columns);
        }
    }

    private int[] findColumns(CsvRecords header) {
        List<String> names = new ArrayList<>();
        if (mapping.headerRow() > 0) {
            for (int i = 0; i < header.cells(); i++) {
                int from = i == 0 && startsWithMark(header) ? 3 : header.from(i);
                names.add(new String(
                                header.bytes(),
                                from,
                                header.to(i) - from,
                                mapping.text().charset())
                        .strip());
            }
        }
        timeColumns =
                mapping.timeColumns().stream().mapToInt(s -> find(s, names)).toArray();
        boatColumn = mapping.boat() == null ? -1 : find(mapping.boat(), names);
        int[] found = mapping.columns().stream()
                .mapToInt(c -> find(c.selector(), names))
                .toArray();
        lastColumn = Arrays.stream(found).max().orElse(0);
        return found;
    }

    /** The byte order mark that some programs put before UTF-8. */
    private static boolean startsWithMark(CsvRecords header) {
        byte[] bytes = header.bytes();
        return header.to(0) >= 3 && bytes[0] == (byte) 0xef && bytes[1] == (byte) 0xbb && bytes[2] == (byte) 0xbf;
    }

    private int find(CsvSelector selector, List<String> names) {
        String name = selector.name();
        if (name == null) {
            return selector.index() - 1;
        }
        int at = names.indexOf(name);
        if (at < 0 && noColumn == null) {
            noColumn = new IngestResult.NoColumn(name, names, report(EnumSet.noneOf(IngestNote.class)));
        }
        return at;
    }

    private void takeData(CsvRecords row, long line, int[] found) {
        long time = timeOf(row);
        if (time == TimeText.NONE) {
            issues.add(IssueKind.BAD_TIME, line, row.bytes(), 0, row.to(row.cells() - 1));
            return;
        }
        BoatRows boat = boatOf(row);
        if (timeFormat.isTimeOfDay()) {
            boat.beginTimeOfDay(time, line);
        } else {
            boat.beginFull(timeFormat.isElapsed() && start != null ? start + time : time, line);
        }
        boolean any = false;
        for (int c = 0; c < found.length; c++) {
            double value = valueOf(row, found[c], line);
            if (!Double.isNaN(value)) {
                value = rules[c].normal(mapping.columns().get(c).toSi(value));
                any = true;
            }
            boat.put(c, value);
        }
        usable += any ? 1 : 0;
        if (row.cells() <= lastColumn) {
            issues.add(IssueKind.SHORT_ROW, line, row.bytes(), 0, row.to(row.cells() - 1));
        }
    }

    private long timeOf(CsvRecords row) {
        int length = 0;
        for (int column : timeColumns) {
            if (column >= row.cells()) {
                return TimeText.NONE;
            }
            int from = skipSpaces(row, column);
            int size = row.to(column) - from;
            if (length + size + 1 > joined.length) {
                return TimeText.NONE;
            }
            if (length > 0) {
                joined[length++] = ' ';
            }
            System.arraycopy(row.bytes(), from, joined, length, size);
            length += size;
        }
        while (length > 0 && joined[length - 1] == ' ') {
            length--;
        }
        int begin = length >= 3 && joined[0] == (byte) 0xef && joined[1] == (byte) 0xbb ? 3 : 0;
        return timeFormat.parse(joined, begin, length, point);
    }

    private static int skipSpaces(CsvRecords row, int column) {
        int from = row.from(column);
        while (from < row.to(column) && row.bytes()[from] == ' ') {
            from++;
        }
        return from;
    }

    private double valueOf(CsvRecords row, int column, long line) {
        if (column >= row.cells() || isAbsent(row, column)) {
            return Double.NaN;
        }
        double value = DecimalText.parse(row.bytes(), row.from(column), row.to(column), point);
        if (Double.isNaN(value)) {
            issues.add(IssueKind.BAD_NUMBER, line, row.bytes(), row.from(column), row.to(column));
        }
        return value;
    }

    private static boolean isAbsent(CsvRecords row, int column) {
        int from = skipSpaces(row, column);
        int to = row.to(column);
        while (to > from && row.bytes()[to - 1] == ' ') {
            to--;
        }
        if (from == to) {
            return true;
        }
        for (String word : ABSENT) {
            if (isWord(row.bytes(), from, to, word)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isWord(byte[] bytes, int from, int to, String word) {
        if (to - from != word.length()) {
            return false;
        }
        for (int i = 0; i < word.length(); i++) {
            if (Character.toLowerCase((char) bytes[from + i]) != word.charAt(i)) {
                return false;
            }
        }
        return true;
    }

    private BoatRows boatOf(CsvRecords row) {
        String name = defaultBoat;
        if (boatColumn >= 0 && boatColumn < row.cells()) {
            int from = row.from(boatColumn);
            String cell = new String(
                            row.bytes(),
                            from,
                            row.to(boatColumn) - from,
                            mapping.text().charset())
                    .strip();
            name = cell.isEmpty() ? name : cell;
        }
        for (BoatRows boat : boats) {
            if (boat.boat().equals(name)) {
                return boat;
            }
        }
        BoatRows boat = new BoatRows(name, mapping);
        boats.add(boat);
        return boat;
    }

    @Override
    public IngestResult finish() {
        records.end();
        Set<IngestNote> notes = EnumSet.noneOf(IngestNote.class);
        if (noColumn != null) {
            return noColumn;
        }
        if (usable == 0) {
            return new IngestResult.Nothing(report(notes));
        }
        boolean noStart =
                (timeFormat.isElapsed() && start == null) || boats.stream().anyMatch(boat -> boat.needsStart(start));
        if (noStart) {
            return new IngestResult.NoDate(report(notes));
        }
        List<BoatTrack> tracks = new ArrayList<>();
        for (BoatRows boat : boats) {
            BoatTrack track = boat.toTrack(start, issues, notes);
            if (track != null) {
                tracks.add(track);
            }
        }
        return tracks.isEmpty()
                ? new IngestResult.Nothing(report(notes))
                : new IngestResult.Tracks(tracks, report(notes));
    }

    private IngestReport report(Set<IngestNote> notes) {
        return new IngestReport(records.lines(), usable, issues, notes);
    }
}
