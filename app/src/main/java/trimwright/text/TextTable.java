package trimwright.text;

import java.util.ArrayList;
import java.util.List;

/** A table for a terminal: columns as wide as their widest cell, numbers to the right, words to the left. */
public final class TextTable {
    private static final String BETWEEN = "  ";

    private final List<List<String>> rows = new ArrayList<>();

    /** The head is one line; its cells are separated by {@code |} as they stand in the bundle. */
    public TextTable(String head) {
        rows.add(List.of(head.split("\\|", -1)));
    }

    /** A further row; throws {@link IllegalArgumentException} where it has not as many cells as the head. */
    public TextTable row(List<String> cells) {
        if (cells.size() != rows.get(0).size()) {
            throw new IllegalArgumentException(
                    "a row of " + cells.size() + " cells under " + rows.get(0).size());
        }
        rows.add(List.copyOf(cells));
        return this;
    }

    public boolean isEmpty() {
        return rows.size() == 1;
    }

    /** All lines, each with a line feed and no blanks at its end. */
    public String text() {
        int columns = rows.get(0).size();
        int[] width = new int[columns];
        boolean[] words = new boolean[columns];
        for (int r = 0; r < rows.size(); r++) {
            for (int c = 0; c < columns; c++) {
                String cell = rows.get(r).get(c);
                width[c] = Math.max(width[c], cell.length());
                words[c] |= r > 0 && !cell.isEmpty() && Character.isLetter(cell.charAt(0));
            }
        }
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int c = 0; c < columns; c++) {
                String blanks = " ".repeat(width[c] - row.get(c).length());
                line.append(c == 0 ? "" : BETWEEN).append(words[c] ? row.get(c) + blanks : blanks + row.get(c));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return text.toString();
    }
}
