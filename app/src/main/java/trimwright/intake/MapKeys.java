package trimwright.intake;

import java.util.List;
import trimwright.keyfile.Key;
import trimwright.keyfile.KeyTable;

/** All keys of a mapping file; reader, checker and docs/formats.md share this table. */
public final class MapKeys {
    static final String SCHEMA = "csv-map/1";
    private static final int MOST = 10_000;

    public static final KeyTable TABLE = new KeyTable(
            SCHEMA,
            List.of(
                    Key.text("encoding", "of the table: utf-8 (default), iso-8859-1, windows-1252, utf-16, ...")
                            .orAbsent(),
                    Key.text("delimiter", "between cells: \",\" (default), \";\", \"|\", \"tab\" or \"space\"")
                            .orAbsent(),
                    Key.text("decimal", "before decimals: \".\" (default) or \",\"")
                            .orAbsent(),
                    Key.count("header_row", 0, MOST, "row with the columns' names; 1 by default, 0 if there is none")
                            .orAbsent(),
                    Key.count(
                                    "skip_rows",
                                    0,
                                    MOST,
                                    "rows before the data, the header among them; header_row by default")
                            .orAbsent(),
                    Key.text("group", "name of the group that the channels become; csv by default")
                            .orAbsent(),
                    Key.text("boat_file_suffix", "end of the file's name that is no part of the boat's: \"-wing\"")
                            .orAbsent(),
                    Key.text("boat.name", "name of the column that names the boat")
                            .orAbsent(),
                    Key.count("boat.index", 1, MOST, "or its place, from 1").orAbsent(),
                    Key.text(
                            "time.format",
                            "iso, epoch_s, epoch_ms, epoch_us, epoch_ns, elapsed_s, or a pattern as \"dd/MM/yyyy HH:mm:ss\""),
                    Key.text("time.zone", "of times without one: UTC (default), Europe/Madrid, +02:00")
                            .orAbsent(),
                    Key.text("time.column[].name", "name of the column of time; two of them for day and time")
                            .orAbsent(),
                    Key.count("time.column[].index", 1, MOST, "or its place, from 1")
                            .orAbsent(),
                    Key.text("column[].name", "name of a column").orAbsent(),
                    Key.count("column[].index", 1, MOST, "or its place, from 1").orAbsent(),
                    Key.text("column[].channel", "path of the channel that it becomes; own ones begin with extra."),
                    Key.text("column[].unit", "of its numbers: kn, m/s, km/h, deg, rad, kN, N, C, hPa, ..."),
                    Key.flag("column[].negate", "true if its sign is the opposite of the channel's")
                            .orAbsent()));

    private MapKeys() {}
}
