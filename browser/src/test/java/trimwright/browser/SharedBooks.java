package trimwright.browser;

import java.nio.file.Path;
import trimwright.prepare.BookCache;
import trimwright.prepare.TargetBooks;

/**
 * Target books that all tests of pages share: kept under a key of the program itself, so one is computed once however many
 * pages show it, and never found by another build.
 */
final class SharedBooks {
    private static final TargetBooks BOOKS = new TargetBooks(new BookCache(
            Path.of(System.getProperty("trimwright.target", "target"), "test-cache", "targets")
                    .toAbsolutePath(),
            note -> {}));

    private SharedBooks() {}

    static TargetBooks get() {
        return BOOKS;
    }
}
