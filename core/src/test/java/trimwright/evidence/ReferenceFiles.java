package trimwright.evidence;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import org.opentest4j.TestAbortedException;

/** Files outside the project that tests compare with, found through the property {@code trimwright.reference}. */
public final class ReferenceFiles {
    private ReferenceFiles() {}

    /**
     * The file of that path below the reference folder. Where it is absent the test is skipped, or fails if
     * {@code trimwright.reference.required} is true.
     */
    public static Path get(String path) {
        Path file = Path.of(System.getProperty("trimwright.reference", "../shared"), path);
        if (Files.isReadable(file)) {
            return file;
        }
        String message = "reference file absent: " + path;
        if (Boolean.getBoolean("trimwright.reference.required")) {
            throw new AssertionError(message + " (trimwright.reference.required is set)");
        }
        throw new TestAbortedException(message);
    }

    /** All bytes of the file, unpacked if its name ends in .gz. */
    public static byte[] bytes(String path) {
        Path file = get(path);
        try {
            byte[] raw = Files.readAllBytes(file);
            if (!path.endsWith(".gz")) {
                return raw;
            }
            try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(raw))) {
                return in.readAllBytes();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(path, e);
        }
    }
}
