package trimwright.keyfile;

/**
 * One key that a file may have.
 *
 * @param path dotted, {@code []} behind an array of tables: {@code wing[].station[].chord_m}
 * @param kind what stands behind the equals sign
 * @param min least value in the unit of the key; for numbers and counts
 * @param max largest value in the unit of the key
 * @param presence whether the file must have it
 * @param meaning one line for the person who writes the file
 */
public record Key(String path, Kind kind, double min, double max, Presence presence, String meaning) {
    /** What stands behind the equals sign. */
    public enum Kind {
        NUMBER,
        COUNT,
        FLAG,
        TEXT
    }

    /** Whether a file must have the key. */
    public enum Presence {
        REQUIRED,
        OPTIONAL
    }

    public static Key number(String path, double min, double max, String meaning) {
        return new Key(path, Kind.NUMBER, min, max, Presence.REQUIRED, meaning);
    }

    public static Key count(String path, double min, double max, String meaning) {
        return new Key(path, Kind.COUNT, min, max, Presence.REQUIRED, meaning);
    }

    public static Key flag(String path, String meaning) {
        return new Key(path, Kind.FLAG, Double.NaN, Double.NaN, Presence.REQUIRED, meaning);
    }

    public static Key text(String path, String meaning) {
        return new Key(path, Kind.TEXT, Double.NaN, Double.NaN, Presence.REQUIRED, meaning);
    }

    /** The same key, but a file may leave it out. */
    public Key orAbsent() {
        return new Key(path, kind, min, max, Presence.OPTIONAL, meaning);
    }

    /** The last word of the path. */
    public String name() {
        return path.substring(path.lastIndexOf('.') + 1);
    }

    /** The path of the table that the key stands in; empty for the top of the file. */
    public String table() {
        int dot = path.lastIndexOf('.');
        return dot < 0 ? "" : path.substring(0, dot);
    }

    public UnitSuffix unit() {
        return kind == Kind.NUMBER ? UnitSuffix.of(name()) : UnitSuffix.NONE;
    }
}
