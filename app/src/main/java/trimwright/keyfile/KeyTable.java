package trimwright.keyfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * All keys of one kind of file. The checker, the loader and the page in docs/formats.md all read this table, so none can
 * know a key that another does not.
 */
public final class KeyTable {
    private final String schema;
    private final Set<String> optional;
    private final Map<String, Key> byPath = new LinkedHashMap<>();
    private final Set<String> tables = new LinkedHashSet<>();

    /** Keys of the files that begin with {@code schema = "..."}. */
    public KeyTable(String schema, List<Key> keys) {
        this(schema, keys, Set.of());
    }

    /**
     * The same, where some tables may be left out whole.
     *
     * @param optional paths of tables that a file need not have, though their rows have keys that are required
     */
    public KeyTable(String schema, List<Key> keys, Set<String> optional) {
        this.schema = schema;
        this.optional = Set.copyOf(optional);
        add(Key.text("schema", "kind and version of this file: \"" + schema + "\""));
        keys.forEach(this::add);
    }

    private void add(Key key) {
        if (byPath.put(key.path(), key) != null) {
            throw new IllegalArgumentException("twice in the table: " + key.path());
        }
        String table = key.table();
        for (int dot = table.indexOf('.'); dot >= 0; dot = table.indexOf('.', dot + 1)) {
            tables.add(table.substring(0, dot));
        }
        tables.add(table);
    }

    public String schema() {
        return schema;
    }

    public List<Key> keys() {
        return List.copyOf(byPath.values());
    }

    /** The key of that path, or null. */
    public @Nullable Key findKey(String path) {
        return byPath.get(path);
    }

    public boolean isTable(String path) {
        return tables.contains(path);
    }

    /** Keys that stand directly in that table. */
    public List<Key> keysIn(String table) {
        return byPath.values().stream().filter(key -> key.table().equals(table)).toList();
    }

    /** Names of all that may stand directly in that table, keys and tables. */
    public List<String> namesIn(String table) {
        List<String> names = new ArrayList<>();
        keysIn(table).forEach(key -> names.add(key.name()));
        for (String below : tablesIn(table)) {
            names.add(below.substring(below.lastIndexOf('.') + 1).replace("[]", ""));
        }
        return names;
    }

    /** Paths of the tables that stand directly in that table. */
    public List<String> tablesIn(String table) {
        String prefix = table.isEmpty() ? "" : table + ".";
        return tables.stream()
                .filter(path -> !path.isEmpty() && path.startsWith(prefix))
                .filter(path -> path.indexOf('.', prefix.length()) < 0)
                .filter(path -> !path.equals(table))
                .toList();
    }

    /** Whether a file must have that table: some key in it or below is required, and it may not be left out whole. */
    public boolean isRequired(String table) {
        return !optional.contains(table)
                && byPath.values().stream()
                        .anyMatch(key -> key.presence() == Key.Presence.REQUIRED
                                && key.path().startsWith(table + "."));
    }
}
