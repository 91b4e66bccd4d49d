package trimwright.prepare;

import java.nio.file.Path;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import trimwright.target.TargetBook;

/**
 * Target books on disk from one run of the program to the next. Whatever is wrong with the folder or a file in it only costs
 * the time of computing a book again.
 */
public final class BookCache {
    /** Chosen: books of a few boats and grids; some 200 kilobytes each. */
    private static final int KEPT = 30;

    private final KeptFiles files;

    /**
     * @param folder made when the first book is kept
     * @param notes told once, in one line, when books cannot be kept
     */
    public BookCache(Path folder, Consumer<String> notes) {
        files = new KeptFiles(folder, ".book", KEPT, notes);
    }

    /** The book kept for a request, null where there is none that is whole. */
    @Nullable
    TargetBook find(TargetRequest request) {
        String key = BookKey.of(request);
        byte[] bytes = key == null ? null : files.find(key);
        if (key == null || bytes == null) {
            return null;
        }
        TargetBook book = BookBytes.read(key, bytes);
        if (book != null) {
            files.markUsed(key);
        }
        return book;
    }

    void keep(TargetRequest request, TargetBook book) {
        String key = BookKey.of(request);
        if (key != null) {
            files.keep(key, BookBytes.write(key, book));
        }
    }
}
