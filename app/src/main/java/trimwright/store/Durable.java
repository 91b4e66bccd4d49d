package trimwright.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Files that are on the disk, whole, before anybody can see them under their final name. */
public final class Durable {
    private Durable() {}

    /** Replaces the file in one step: a reader sees the old text or the new, and a power cut leaves one of them. */
    public static void replace(Path file, String text) {
        Path aside = file.resolveSibling("." + file.getFileName() + ".new");
        try {
            Files.writeString(aside, text, StandardCharsets.UTF_8);
            force(aside);
            Files.move(aside, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            forceFolderOf(file);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + file + ": " + e.getMessage(), e);
        }
    }

    static void force(Path file) {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + file + ": " + e.getMessage(), e);
        }
    }

    /** Forces the file's renaming to disk. Some systems do not let a folder be opened; they are left alone. */
    static void forceFolderOf(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // The renaming itself succeeded; only its survival of a power cut is left to the system.
            return;
        }
    }
}
