package trimwright.intake;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** The bytes of one file that is to be imported: as they came, and unpacked. */
final class SourceBytes {
    private static final int BUFFER = 1 << 16;

    private final Path path;

    SourceBytes(Path path) {
        this.path = path;
    }

    Path path() {
        return path;
    }

    /** The name without folders. */
    String name() {
        return String.valueOf(path.getFileName());
    }

    /** Length on disk (bytes). */
    long length() {
        try {
            if (Files.isDirectory(path)) {
                throw new UserInputException(Texts.of("intake.folder", path));
            }
            return Files.size(path);
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /** SHA-256 of the bytes as they came, lower-case hex. */
    String sha256() {
        try (InputStream in = Files.newInputStream(path)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] buffer = new byte[BUFFER];
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                digest.update(buffer, 0, n);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (IOException e) {
            throw unreadable(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The bytes as they came. */
    InputStream openRaw() throws IOException {
        return Files.newInputStream(path);
    }

    /** Takes unpacked bytes, piece by piece. */
    interface Taker {
        void take(byte[] bytes, int length) throws IOException;
    }

    /**
     * Hands over all bytes, unpacked where they are gzip.
     *
     * @param progress told the bytes read from disk
     * @throws UserInputException where the file cannot be read or unpacked
     */
    void read(Progress progress, Taker taker) {
        try (InputStream raw = new Counted(Files.newInputStream(path), progress);
                InputStream in = unpacked(raw)) {
            byte[] buffer = new byte[FileKind.HEAD];
            for (int n = in.readNBytes(buffer, 0, buffer.length); n > 0; n = in.readNBytes(buffer, 0, buffer.length)) {
                taker.take(buffer, n);
            }
        } catch (EOFException e) {
            throw new UserInputException(Texts.of("intake.gzip_cut", path), e);
        } catch (ZipException e) {
            throw new UserInputException(Texts.of("intake.gzip_damaged", path, String.valueOf(e.getMessage())), e);
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    private static InputStream unpacked(InputStream raw) throws IOException {
        BufferedInputStream in = new BufferedInputStream(raw, BUFFER);
        in.mark(2);
        boolean gzip = in.read() == 0x1f && in.read() == 0x8b;
        in.reset();
        return gzip ? new GZIPInputStream(in, BUFFER) : in;
    }

    private UserInputException unreadable(IOException e) {
        String key = e instanceof NoSuchFileException
                ? "intake.no_file"
                : e instanceof AccessDeniedException ? "intake.denied" : "intake.unreadable";
        return new UserInputException(Texts.of(key, path, String.valueOf(e.getMessage())), e);
    }

    /** Tells how far reading has come. */
    private static final class Counted extends FilterInputStream {
        private final Progress progress;

        Counted(InputStream in, Progress progress) {
            super(in);
            this.progress = progress;
        }

        @Override
        public int read() throws IOException {
            int b = super.read();
            progress.done(b < 0 ? 0 : 1);
            return b;
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            int n = super.read(buffer, offset, length);
            progress.done(Math.max(0, n));
            return n;
        }
    }
}
