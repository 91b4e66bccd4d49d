package trimwright.keyfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What a file says, in SI. A value that is absent or faulty reads as NaN, null or an empty list, so that checks between
 * values can run over a faulty file. Asking for a key that is not in the table is a fault of the program.
 */
public final class Values {
    private final KeyTable table;
    private final String prefix;
    private final String shown;
    private final int line;
    private final Map<String, Object> found = new TreeMap<>();
    private final Map<String, Integer> lines = new TreeMap<>();
    private final Map<String, List<Values>> lists = new TreeMap<>();
    private final Set<String> asked;

    Values(KeyTable table) {
        this(table, "", "", 0, new TreeSet<>());
    }

    private Values(KeyTable table, String prefix, String shown, int line, Set<String> asked) {
        this.table = table;
        this.prefix = prefix;
        this.shown = shown;
        this.line = line;
        this.asked = asked;
    }

    void put(String path, Object value, int at) {
        found.put(path, value);
        lines.put(path, at);
    }

    Values addRow(String list, int at) {
        List<Values> rows = lists.computeIfAbsent(list, name -> new ArrayList<>());
        String path = list + "[" + rows.size() + "].";
        Values row = new Values(table, prefix + list + "[].", shown + path, at, asked);
        rows.add(row);
        return row;
    }

    /** The number in SI; NaN if absent. */
    public double number(String path) {
        Object value = value(path);
        return value instanceof Double number ? key(path).unit().toSi(number) : Double.NaN;
    }

    /** The number in SI, or null if absent. */
    public @Nullable Double findNumber(String path) {
        double number = number(path);
        return Double.isNaN(number) ? null : number;
    }

    /** The whole number; 0 if absent. */
    public int count(String path) {
        Object value = value(path);
        return value instanceof Double number ? number.intValue() : 0;
    }

    /** The flag; false if absent. */
    public boolean isSet(String path) {
        return Boolean.TRUE.equals(value(path));
    }

    /** The text; null if absent. */
    public @Nullable String findText(String path) {
        return value(path) instanceof String text ? text : null;
    }

    /** The text of a key that the file was checked to have. */
    public String getText(String path) {
        String text = findText(path);
        if (text == null) {
            throw new IllegalStateException("read before the check: " + path);
        }
        return text;
    }

    /** The rows of an array of tables. */
    public List<Values> list(String name) {
        if (!table.isTable(prefix + name + "[]")) {
            throw new IllegalArgumentException("not in the table: " + prefix + name + "[]");
        }
        return List.copyOf(lists.getOrDefault(name, List.of()));
    }

    /** A fault about the value of that key, at its line. */
    public Fault fault(String path, String message) {
        key(path);
        return new Fault(lines.getOrDefault(path, line), shown + path, message);
    }

    /** Paths of the table that were asked for, on all rows: a test sees that the loader reads every key. */
    Set<String> asked() {
        return asked;
    }

    private @Nullable Object value(String path) {
        asked.add(key(path).path());
        return found.get(path);
    }

    private Key key(String path) {
        Key key = table.findKey(prefix + path);
        if (key == null) {
            throw new IllegalArgumentException("not in the table: " + prefix + path);
        }
        return key;
    }
}
