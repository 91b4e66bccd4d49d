package trimwright.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Which library a command works on. */
public final class LibraryOption {
    @Option(names = "--library", paramLabel = "DIR", descriptionKey = "common.library")
    private @Nullable Path library;

    /** The folder given, or else the data folder. */
    public Path folder(Folders folders) {
        return library == null ? folders.data() : library.toAbsolutePath().normalize();
    }
}
