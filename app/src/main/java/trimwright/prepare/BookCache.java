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
import trimwright.target.TargetBook;
import trimwright.text.Texts;

/**
 * Target books on disk from one run of the program to the next. Whatever is wrong with the folder or a file in it only costs
 * the time of computing a book again.
 */
public final class BookCache {
    /** Chosen: books of a few boats and grids; some 200 kilobytes each. */
    private static final int KEPT = 30;

    private static final String ENDING = ".book";

    private final Path folder;
    private final Consumer<String> notes;
    private boolean noted;

    /**
     * @param folder made when the first book is kept
     * @param notes told once, in one line, when books cannot be kept
     */
    public BookCache(Path folder, Consumer<String> notes) {
        this.folder = folder;
        this.notes = notes;
    }

    /** The book kept for a request, null where there is none that is whole. */
    @Nullable
    TargetBook find(TargetRequest request) {
        String key = BookKey.of(request);
        if (key == null) {
            return null;
        }
        Path file = fileOf(key);
        try {
            TargetBook book = BookBytes.read(key, Files.readAllBytes(file));
            if (book != null) {
                markUsed(file);
            }
            return book;
        } catch (IOException e) {
            return null;
        }
    }

    void keep(TargetRequest request, TargetBook book) {
        String key = BookKey.of(request);
        if (key == null) {
            return;
        }
        try {
            Files.createDirectories(folder);
            // Two programs may write the same book at once: each has a file of its own aside.
            Path aside = Files.createTempFile(folder, "new-", ENDING);
            try {
                Files.write(aside, BookBytes.write(key, book));
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
        return folder.resolve(key + ENDING);
    }

    /** The oldest by last use go; so do files that a killed program left aside, in their turn. */
    private void dropOldest() throws IOException {
        List<Path> files;
        try (Stream<Path> found = Files.list(folder)) {
            files = new ArrayList<>(
                    found.filter(file -> file.toString().endsWith(ENDING)).toList());
        }
        files.sort(Comparator.comparing(BookCache::lastUse).reversed());
        for (Path file : files.subList(Math.min(KEPT, files.size()), files.size())) {
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

    private static void markUsed(Path file) {
        try {
            Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
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
