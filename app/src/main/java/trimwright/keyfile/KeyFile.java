package trimwright.keyfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;
import trimwright.text.Texts;

/** One file read against its table: what it says and every fault that single values show. */
public final class KeyFile {
    private final KeyTable table;
    private final Function<String, @Nullable String> refusal;
    private final List<Fault> faults = new ArrayList<>();
    private final Values values;

    private KeyFile(KeyTable table, Function<String, @Nullable String> refusal) {
        this.table = table;
        this.refusal = refusal;
        values = new Values(table);
    }

    /**
     * Reads TOML text.
     *
     * @param refusal for a name that is not in the table: why such a thing cannot be, or null if it is merely unknown
     */
    public static KeyFile read(String toml, KeyTable table, Function<String, @Nullable String> refusal) {
        KeyFile file = new KeyFile(table, refusal);
        TomlParseResult parsed = Toml.parse(toml);
        if (parsed.hasErrors()) {
            for (TomlParseError error : parsed.errors()) {
                String message = String.valueOf(error.getMessage());
                file.faults.add(new Fault(error.position().line(), "", Texts.of("keyfile.not_toml", message)));
            }
            return file;
        }
        file.readTable(parsed, "", "", file.values, "", 1);
        String schema = file.values.findText("schema");
        if (schema != null && !schema.equals(table.schema())) {
            file.faults.add(file.values.fault("schema", Texts.of("keyfile.schema", schema, table.schema())));
        }
        return file;
    }

    public Values values() {
        return values;
    }

    /** Faults of single values, in the order of the file. */
    public List<Fault> faults() {
        return faults.stream().sorted(Fault.BY_PLACE).toList();
    }

    /**
     * @param path of this table in the key table, with [] for arrays
     * @param shown of this table for people, with places in arrays
     * @param into where values of this row go
     * @param inRow path of this table below the row
     */
    private void readTable(TomlTable toml, String path, String shown, Values into, String inRow, int line) {
        for (String name : toml.keySet()) {
            TomlPosition position = toml.inputPositionOf(List.of(name));
            int at = position == null ? line : position.line();
            Object value = toml.get(List.of(name));
            Key key = table.findKey(join(path, name));
            if (key != null) {
                readValue(key, join(shown, name), value, into, join(inRow, name), at);
            } else if (value instanceof TomlTable below && table.isTable(join(path, name))) {
                readTable(below, join(path, name), join(shown, name), into, join(inRow, name), at);
            } else if (value instanceof TomlArray rows && table.isTable(join(path, name) + "[]")) {
                readRows(rows, join(path, name) + "[]", join(shown, name), into, join(inRow, name), at);
            } else if (table.isTable(join(path, name)) || table.isTable(join(path, name) + "[]")) {
                faults.add(new Fault(at, join(shown, name), notATable(join(path, name), value)));
            } else {
                faults.add(new Fault(at, join(shown, name), unknown(path, name)));
            }
        }
        findMissing(toml, path, shown, line);
    }

    /** What is wrong with a value that stands where a table, or an array of them, belongs. */
    private String notATable(String path, @Nullable Object value) {
        boolean many = table.isTable(path + "[]");
        String keys = String.join(", ", table.namesIn(many ? path + "[]" : path));
        String header = path.replace("[]", "");
        if (many) {
            return Texts.of("keyfile.want_tables", header, keys);
        }
        return Texts.of(value instanceof TomlArray ? "keyfile.want_one_table" : "keyfile.want_table", header, keys);
    }

    private void readRows(TomlArray rows, String path, String shown, Values into, String inRow, int line) {
        for (int i = 0; i < rows.size(); i++) {
            String row = shown + "[" + i + "]";
            TomlPosition position = rows.inputPositionOf(i);
            int at = position == null ? line : position.line();
            if (rows.get(i) instanceof TomlTable table) {
                readTable(table, path, row, into.addRow(inRow, at), "", at);
            } else {
                faults.add(new Fault(at, row, Texts.of("keyfile.want_row", String.join(", ", table.namesIn(path)))));
            }
        }
    }

    private void readValue(Key key, String shown, @Nullable Object value, Values into, String inRow, int at) {
        String fault = null;
        switch (key.kind()) {
            case TEXT -> {
                if (value instanceof String text && !text.isBlank()) {
                    into.put(inRow, text, at);
                } else {
                    fault = Texts.of("keyfile.want_text", shownValue(value));
                }
            }
            case FLAG -> {
                if (value instanceof Boolean flag) {
                    into.put(inRow, flag, at);
                } else {
                    fault = Texts.of("keyfile.want_flag", shownValue(value));
                }
            }
            case NUMBER, COUNT -> {
                boolean whole = value instanceof Long;
                if (!(value instanceof Number number) || (key.kind() == Key.Kind.COUNT && !whole)) {
                    fault = Texts.of("keyfile.want_number", shownValue(value), rangeOf(key));
                } else if (!(number.doubleValue() >= key.min() && number.doubleValue() <= key.max())) {
                    fault = Texts.of("keyfile.range", withUnit(number.doubleValue(), key), rangeOf(key));
                } else {
                    into.put(inRow, number.doubleValue(), at);
                }
            }
        }
        if (fault != null) {
            faults.add(new Fault(at, shown, fault));
        }
    }

    private void findMissing(TomlTable toml, String path, String shown, int line) {
        for (Key key : table.keysIn(path)) {
            if (key.presence() == Key.Presence.REQUIRED && !toml.contains(List.of(key.name()))) {
                faults.add(new Fault(line, join(shown, key.name()), Texts.of("keyfile.missing", wanted(key))));
            }
        }
        for (String below : table.tablesIn(path)) {
            String name = below.substring(below.lastIndexOf('.') + 1).replace("[]", "");
            if (table.isRequired(below) && !toml.contains(List.of(name))) {
                String keys = String.join(", ", table.namesIn(below));
                faults.add(new Fault(line, join(shown, name), Texts.of("keyfile.missing_table", keys)));
            }
        }
    }

    private String unknown(String path, String name) {
        String refused = refusal.apply(name);
        if (refused != null) {
            return refused;
        }
        String near = NearName.find(name, table.namesIn(path));
        return near == null
                ? Texts.of("keyfile.unknown", String.join(", ", table.namesIn(path)))
                : Texts.of("keyfile.unknown_near", near);
    }

    private static String wanted(Key key) {
        return switch (key.kind()) {
            case NUMBER, COUNT -> rangeOf(key);
            case FLAG -> "true or false";
            case TEXT -> "text";
        };
    }

    /** For people: {@code 3 to 40 m}. */
    public static String rangeOf(Key key) {
        return plain(key.min()) + " to " + withUnit(key.max(), key);
    }

    private static String withUnit(double value, Key key) {
        String symbol = key.unit().symbol();
        return symbol.isEmpty() ? plain(value) : plain(value) + " " + symbol;
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.format(Locale.ROOT, "%.0f", value)
                : Double.toString(value);
    }

    private static String shownValue(@Nullable Object value) {
        if (value instanceof TomlTable) {
            return "a table";
        }
        if (value instanceof TomlArray) {
            return "an array";
        }
        return value instanceof String text ? "\"" + text + "\"" : String.valueOf(value);
    }

    private static String join(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
