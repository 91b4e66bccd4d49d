package trimwright.prepare;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.section.SectionColumn;
import trimwright.section.SectionQuantity;
import trimwright.section.SectionTable;
import trimwright.section.TableGrid;

/** A table of sections as bytes and back, every bit of every number: key, columns, SHA-256 of both. No contract. */
final class TableBytes {
    private static final int DIGEST = 32;

    private TableBytes() {}

    static byte[] write(String key, SectionTable table) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        TableGrid grid = table.grid();
        try {
            out.writeUTF(key);
            for (int t = 0; t < grid.thicknesses().size(); t++) {
                for (int r = 0; r < grid.reynolds().size(); r++) {
                    write(out, table.column(t, r), grid.places().size());
                }
            }
            out.write(BookKey.sha256().digest(bytes.toByteArray()));
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory failed", e);
        }
        return bytes.toByteArray();
    }

    private static void write(DataOutputStream out, SectionColumn column, int places) throws IOException {
        out.writeInt(column.filled());
        for (int j = 0; j < column.flaps(); j++) {
            out.writeDouble(column.low(j));
            out.writeDouble(column.high(j));
            for (SectionQuantity quantity : SectionQuantity.values()) {
                for (int i = 0; i < places; i++) {
                    out.writeDouble(column.value(quantity, j, i));
                }
            }
        }
    }

    /** The table, or null where the bytes are not whole or those of another key. */
    static @Nullable SectionTable read(String key, TableGrid grid, byte[] bytes) {
        if (bytes.length < DIGEST) {
            return null;
        }
        byte[] body = Arrays.copyOf(bytes, bytes.length - DIGEST);
        byte[] digest = Arrays.copyOfRange(bytes, body.length, bytes.length);
        if (!Arrays.equals(BookKey.sha256().digest(body), digest)) {
            return null;
        }
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(body));
        try {
            if (!key.equals(in.readUTF())) {
                return null;
            }
            List<List<SectionColumn>> columns = new ArrayList<>();
            for (int t = 0; t < grid.thicknesses().size(); t++) {
                List<SectionColumn> row = new ArrayList<>();
                for (int r = 0; r < grid.reynolds().size(); r++) {
                    row.add(read(in, grid.flaps().size(), grid.places().size()));
                }
                columns.add(row);
            }
            return new SectionTable(grid, columns);
        } catch (IOException | IllegalArgumentException e) {
            return null;
        }
    }

    private static SectionColumn read(DataInputStream in, int flaps, int places) throws IOException {
        int filled = in.readInt();
        double[] low = new double[flaps];
        double[] high = new double[flaps];
        double[][][] value = new double[SectionQuantity.values().length][flaps][places];
        for (int j = 0; j < flaps; j++) {
            low[j] = in.readDouble();
            high[j] = in.readDouble();
            for (double[][] quantity : value) {
                for (int i = 0; i < places; i++) {
                    quantity[j][i] = in.readDouble();
                }
            }
        }
        return new SectionColumn(low, high, value, filled);
    }
}
