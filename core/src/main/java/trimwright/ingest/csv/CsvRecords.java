package trimwright.ingest.csv;

import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;

/**
 * Cuts bytes that come in pieces into rows of cells. A cell may stand in double quotes, a quote inside it is doubled; a
 * row always ends at the end of its line, so that a lost quote costs one row. Memory is bounded: a row over
 * {@value #LONGEST_ROW} bytes is skipped.
 */
final class CsvRecords {
    /** Chosen: a thousand columns of long numbers. */
    static final int LONGEST_ROW = 1 << 16;

    private static final int MOST_CELLS = 4096;

    /** Takes each row as it is found; blank lines are rows without cells. */
    interface Sink {
        void take(CsvRecords row, long line);
    }

    private enum State {
        CELL_START,
        PLAIN,
        QUOTED,
        QUOTE_IN_QUOTED,
        SKIPPING
    }

    private final byte delimiter;
    private final Issues issues;
    private final Sink sink;
    private final byte[] row = new byte[LONGEST_ROW];
    private final int[] ends = new int[MOST_CELLS];
    private int length;
    private int cells;
    private long lines;
    private boolean afterReturn;
    private State state = State.CELL_START;

    CsvRecords(char delimiter, Issues issues, Sink sink) {
        this.delimiter = (byte) delimiter;
        this.issues = issues;
        this.sink = sink;
    }

    long lines() {
        return lines;
    }

    byte[] bytes() {
        return row;
    }

    /** Cells of the row at hand. */
    int cells() {
        return cells;
    }

    /** Begin of cell i, from 0, in {@link #bytes()}. */
    int from(int i) {
        return i == 0 ? 0 : ends[i - 1];
    }

    int to(int i) {
        return ends[i];
    }

    void accept(byte[] bytes, int from, int to) {
        for (int i = from; i < to; i++) {
            byte b = bytes[i];
            if (b == '\n' && afterReturn) {
                afterReturn = false;
                continue;
            }
            afterReturn = b == '\r';
            if (b == '\n' || b == '\r') {
                endRow();
            } else {
                take(b);
            }
        }
    }

    void end() {
        if (length > 0 || cells > 0 || state != State.CELL_START) {
            endRow();
        }
    }

    private void take(byte b) {
        switch (state) {
            case CELL_START -> {
                if (b == '"') {
                    state = State.QUOTED;
                } else {
                    state = State.PLAIN;
                    takePlain(b);
                }
            }
            case PLAIN -> takePlain(b);
            case QUOTED -> {
                if (b == '"') {
                    state = State.QUOTE_IN_QUOTED;
                } else {
                    append(b);
                }
            }
            case QUOTE_IN_QUOTED -> {
                state = b == '"' ? State.QUOTED : State.PLAIN;
                if (b == '"') {
                    append(b);
                } else {
                    takePlain(b);
                }
            }
            case SKIPPING -> {}
        }
    }

    private void takePlain(byte b) {
        if (b == delimiter) {
            endCell();
            state = state == State.SKIPPING ? state : State.CELL_START;
        } else {
            append(b);
        }
    }

    private void append(byte b) {
        if (length == LONGEST_ROW) {
            skip();
        } else {
            row[length++] = b;
        }
    }

    private void endCell() {
        if (cells == MOST_CELLS) {
            skip();
        } else {
            ends[cells++] = length;
        }
    }

    private void skip() {
        issues.add(IssueKind.TOO_LONG, lines + 1, row, 0, length);
        state = State.SKIPPING;
    }

    private void endRow() {
        lines++;
        boolean blank = length == 0 && cells == 0 && state == State.CELL_START;
        if (!blank && state != State.SKIPPING) {
            endCell();
        }
        if (state != State.SKIPPING) {
            sink.take(this, lines);
        }
        length = 0;
        cells = 0;
        state = State.CELL_START;
    }
}
