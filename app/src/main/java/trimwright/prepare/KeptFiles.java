package trimwright.prepare;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trimwright.text.Texts;

/**
 * Computed things in a folder from one run of the program to the next, one file a key, the longest unused dropped. Whatever
 * is wrong with the folder or a file in it only costs the time of computing again.
 */
final class KeptFiles {
    private final Path folder;
    private final String ending;
    private final int most;
    private final Consumer<String> notes;
    private boolean noted;

    /**
     * @param folder made when the first file is kept
     * @param ending of names
     * @param most number of files
     * @param notes told once, in one line, when files cannot be kept
     */
    KeptFiles(Path folder, String ending, int most, Consumer<String> notes) {
        this.folder = folder;
        this.ending = ending;
        this.most = most;
        this.notes = notes;
    }

    /** The bytes kept for a key, null where there are none. */
    byte @Nullable [] find(String key) {
        try {
            return Files.readAllBytes(fileOf(key));
        } catch (IOException e) {
            return null;
        }
    }

    void keep(String key, byte[] bytes) {
        try {
            Files.createDirectories(folder);
            // Two programs may write the same file at once: each has one of its own aside.
            Path aside = Files.createTempFile(folder, "new-", ending);
            try {
                Files.write(aside, bytes);
                Files.move(aside, fileOf(key), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(aside);
            }
            dropOldest();
        } catch (IOException e) {
            noteOnce(e);
        }
    }

    private Path fileOf(String key) {
        return folder.resolve(key + ending);
    }

    /** The oldest by last use go; so do files that a killed program left aside, in their turn. */
    private void dropOldest() throws IOException {
        List<Path> files;
        try (Stream<Path> found = Files.list(folder)) {
            files = new ArrayList<>(
                    found.filter(file -> file.toString().endsWith(ending)).toList());
        }
        files.sort(Comparator.comparing(KeptFiles::lastUse).reversed());
        for (Path file : files.subList(Math.min(most, files.size()), files.size())) {
            Files.deleteIfExists(file);
        }
    }

    private static FileTime lastUse(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }

    /** Puts a key's file last in the order of dropping. */
    void markUsed(String key) {
        try {
            Files.setLastModifiedTime(fileOf(key), FileTime.from(Instant.now()));
        } catch (IOException e) {
            // A folder that may only be read: nothing is dropped from it either.
            return;
        }
    }

    private void noteOnce(IOException e) {
        if (!noted) {
            noted = true;
            String reason = e instanceof FileSystemException file && file.getReason() != null
                    ? file.getReason()
                    : e.getClass().getSimpleName();
            notes.accept(Texts.of("targets.not_kept", folder, reason));
        }
    }
}
