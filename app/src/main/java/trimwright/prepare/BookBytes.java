package trimwright.prepare;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.target.Branch;
import trimwright.target.SpeedSlopes;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetGrid;
import trimwright.target.TargetLimit;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.target.TargetVector;

/**
 * A book as bytes and back, every bit of every number: key, book, SHA-256 of both. The form is no contract; a file of another
 * program has another key and is not read.
 */
final class BookBytes {
    private static final int DIGEST = 32;

    private BookBytes() {}

    static byte[] write(String key, TargetBook book) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        try {
            out.writeUTF(key);
            out.writeUTF(book.boat());
            out.writeUTF(book.wing());
            out.writeUTF(book.modelVersion());
            writeRow(
                    out,
                    book.grid().winds().stream()
                            .mapToDouble(Double::doubleValue)
                            .toArray());
            writeRow(
                    out,
                    book.grid().angles().stream()
                            .mapToDouble(Double::doubleValue)
                            .toArray());
            out.writeInt(book.points().size());
            for (TargetPoint point : book.points()) {
                write(out, point);
            }
            out.write(digest(bytes.toByteArray()));
        } catch (IOException e) {
            throw new IllegalStateException("writing to memory failed", e);
        }
        return bytes.toByteArray();
    }

    /** The book, or null where the bytes are not whole or those of another key. */
    static @Nullable TargetBook read(String key, byte[] bytes) {
        if (bytes.length < DIGEST) {
            return null;
        }
        byte[] body = Arrays.copyOf(bytes, bytes.length - DIGEST);
        if (!Arrays.equals(digest(body), Arrays.copyOfRange(bytes, body.length, bytes.length))) {
            return null;
        }
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(body));
        try {
            return key.equals(in.readUTF()) ? read(in) : null;
        } catch (IOException | IllegalArgumentException e) {
            return null;
        }
    }

    private static TargetBook read(DataInputStream in) throws IOException {
        String boat = in.readUTF();
        String wing = in.readUTF();
        String modelVersion = in.readUTF();
        List<Double> winds = Arrays.stream(readRow(in)).boxed().toList();
        List<Double> angles = Arrays.stream(readRow(in)).boxed().toList();
        int count = in.readInt();
        List<TargetPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            points.add(readPoint(in));
        }
        return new TargetBook(boat, wing, modelVersion, new TargetGrid(winds, angles), points);
    }

    private static void write(DataOutputStream out, TargetPoint point) throws IOException {
        out.writeUTF(point.mode().name());
        out.writeUTF(point.branch().name());
        out.writeDouble(point.trueWindSpeed());
        out.writeDouble(point.trueWindAngle());
        out.writeUTF(point.isSolved() ? "" : String.valueOf(point.reason()));
        if (point.isSolved()) {
            Target target = point.getTarget();
            writeRow(out, TargetVector.of(point));
            writeNames(out, target.limits());
            writeNames(out, target.caveats());
            SpeedSlopes slopes = point.slopes();
            writeRow(out, slopes == null ? new double[0] : new double[] {slopes.byWind(), slopes.byAngle()});
        }
    }

    private static TargetPoint readPoint(DataInputStream in) throws IOException {
        TargetMode mode = TargetMode.valueOf(in.readUTF());
        Branch branch = Branch.valueOf(in.readUTF());
        double wind = in.readDouble();
        double angle = in.readDouble();
        String reason = in.readUTF();
        if (!reason.isEmpty()) {
            return TargetPoint.unsolved(mode, branch, wind, angle, reason);
        }
        double[] row = readRow(in);
        Set<TargetLimit> limits = readNames(in, TargetLimit.class);
        Set<TargetCaveat> caveats = readNames(in, TargetCaveat.class);
        double[] slopes = readRow(in);
        return TargetPoint.solved(mode, branch, wind, angle, TargetVector.toTarget(row, limits, caveats))
                .withSlopes(slopes.length == 0 ? null : new SpeedSlopes(slopes[0], slopes[1]));
    }

    private static void writeRow(DataOutputStream out, double[] row) throws IOException {
        out.writeInt(row.length);
        for (double value : row) {
            out.writeDouble(value);
        }
    }

    private static double[] readRow(DataInputStream in) throws IOException {
        double[] row = new double[in.readInt()];
        for (int i = 0; i < row.length; i++) {
            row[i] = in.readDouble();
        }
        return row;
    }

    private static void writeNames(DataOutputStream out, Set<? extends Enum<?>> values) throws IOException {
        out.writeInt(values.size());
        for (Enum<?> value : values) {
            out.writeUTF(value.name());
        }
    }

    private static <E extends Enum<E>> Set<E> readNames(DataInputStream in, Class<E> type) throws IOException {
        Set<E> values = EnumSet.noneOf(type);
        for (int left = in.readInt(); left > 0; left--) {
            values.add(Enum.valueOf(type, in.readUTF()));
        }
        return values;
    }

    private static byte[] digest(byte[] bytes) {
        MessageDigest digest = BookKey.sha256();
        return digest.digest(bytes);
    }
}
