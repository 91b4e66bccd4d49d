package trimwright.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import org.duckdb.DuckDBAppender;
import org.duckdb.DuckDBConnection;
import org.jspecify.annotations.Nullable;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Quality;

/**
 * Groups of channels as Parquet files: {@code time_ns}, and for each channel a column named by its path (NULL where
 * absent) and one named {@code <path>.quality}. DuckDB does the work, in process and in memory: there is no database
 * file that could be locked or need migration.
 */
final class Parquet implements AutoCloseable {
    private @Nullable DuckDBConnection root;

    /** Writes one file, whole and forced to disk. The file must not exist. */
    void write(ChannelGroup group, Path file) {
        try (DuckDBConnection connection = connect();
                Statement statement = connection.createStatement()) {
            StringBuilder columns = new StringBuilder("time_ns BIGINT");
            for (Channel channel : group.channels()) {
                columns.append(", ").append(name(channel.path())).append(" DOUBLE, ");
                columns.append(name(channel.path() + ".quality")).append(" UTINYINT");
            }
            // A temporary table belongs to this connection alone, so writers in other threads do not meet it.
            statement.execute("CREATE TEMP TABLE outgoing (" + columns + ")");
            append(connection, group);
            statement.execute("COPY outgoing TO " + text(file.toString()) + " (FORMAT parquet, COMPRESSION zstd)");
            statement.execute("DROP TABLE outgoing");
            Durable.force(file);
        } catch (SQLException e) {
            throw new IllegalStateException("cannot write " + file + ": " + e.getMessage(), e);
        }
    }

    private static void append(DuckDBConnection connection, ChannelGroup group) throws SQLException {
        byte absent = (byte) Quality.ABSENT.ordinal();
        List<byte[]> marks =
                group.channels().stream().map(Channel::qualityToArray).toList();
        List<Channel> channels = group.channels();
        try (DuckDBAppender appender = connection.createAppender("temp", "main", "outgoing")) {
            for (int i = 0; i < group.size(); i++) {
                appender.beginRow();
                appender.append(group.timeNanos(i));
                for (int c = 0; c < channels.size(); c++) {
                    double value = channels.get(c).get(i);
                    if (Double.isNaN(value)) {
                        appender.appendNull();
                        appender.append(absent);
                    } else {
                        appender.append(value);
                        appender.append(marks.get(c)[i]);
                    }
                }
                appender.endRow();
            }
        }
    }

    /** Reads one file back. */
    ChannelGroup read(GroupInfo info, Path file) {
        if (!Files.isReadable(file)) {
            throw new UserInputException(Texts.of("store.parquet_missing", file));
        }
        List<String> paths = info.paths();
        StringBuilder columns = new StringBuilder("time_ns");
        for (String path : paths) {
            columns.append(", ").append(name(path)).append(", ").append(name(path + ".quality"));
        }
        int capacity = info.rows();
        long[] times = new long[capacity];
        double[][] values = new double[paths.size()][capacity];
        byte[][] marks = new byte[paths.size()][capacity];
        int rows = 0;
        try (DuckDBConnection connection = connect();
                Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery(
                        "SELECT " + columns + " FROM read_parquet(" + text(file.toString()) + ")")) {
            while (result.next() && rows < capacity) {
                times[rows] = result.getLong(1);
                for (int c = 0; c < paths.size(); c++) {
                    double value = result.getDouble(2 * c + 2);
                    values[c][rows] = result.wasNull() ? Double.NaN : value;
                    marks[c][rows] = (byte) result.getShort(2 * c + 3);
                }
                rows++;
            }
        } catch (SQLException e) {
            throw new UserInputException(Texts.of("store.parquet_damaged", file, firstLine(e)), e);
        }
        if (rows < capacity) {
            throw new UserInputException(Texts.of("store.parquet_short", file, rows, capacity));
        }
        List<Channel> channels = new ArrayList<>();
        for (int c = 0; c < paths.size(); c++) {
            channels.add(new Channel(paths.get(c), values[c], marks[c]));
        }
        return new ChannelGroup(info.name(), times, channels);
    }

    private synchronized DuckDBConnection connect() throws SQLException {
        if (root == null) {
            Properties settings = new Properties();
            settings.setProperty("memory_limit", "1GB");
            settings.setProperty("threads", "2");
            settings.setProperty("autoinstall_known_extensions", "false");
            settings.setProperty("autoload_known_extensions", "false");
            // Without a folder of its own it makes one in the user's home.
            settings.setProperty("extension_directory", temporaryFolder().toString());
            settings.setProperty("temp_directory", "");
            Connection opened = DriverManager.getConnection("jdbc:duckdb:", settings);
            root = opened.unwrap(DuckDBConnection.class);
        }
        return root.duplicate().unwrap(DuckDBConnection.class);
    }

    private static Path temporaryFolder() {
        return Path.of(System.getProperty("java.io.tmpdir", "."), "trimwright-duckdb");
    }

    @Override
    public synchronized void close() {
        if (root == null) {
            return;
        }
        try {
            root.close();
        } catch (SQLException e) {
            throw new IllegalStateException("DuckDB does not close: " + e.getMessage(), e);
        } finally {
            root = null;
        }
    }

    private static String firstLine(SQLException e) {
        String message = e.getMessage() == null ? "unknown reason" : e.getMessage();
        return Arrays.asList(message.split("\n", -1)).get(0);
    }

    private static String name(String identifier) {
        return '"' + identifier.replace("\"", "\"\"") + '"';
    }

    private static String text(String literal) {
        return '\'' + literal.replace("'", "''") + '\'';
    }
}
