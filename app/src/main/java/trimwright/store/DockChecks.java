package trimwright.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Dock checks kept with a session, numbered as they were made: {@code dock/001-dunlin.json}. Nothing is ever replaced. */
public final class DockChecks {
    private static final String ENDING = ".json";

    private final Path folder;

    DockChecks(Path session) {
        folder = session.resolve("dock");
    }

    /** Keeps a check of a boat, unless the last one of hers says the same; false where the library cannot be written. */
    public boolean keep(String boat, String text) {
        if (text.equals(findLast(boat))) {
            return true;
        }
        try {
            Files.createDirectories(folder);
            int number = files().size() + 1;
            Path file = folder.resolve(String.format(Locale.ROOT, "%03d-%s%s", number, Slug.of(boat), ENDING));
            if (Files.exists(file)) {
                return false;
            }
            Durable.replace(file, text);
            return true;
        } catch (IOException | UncheckedIOException e) {
            // Said by whoever asked; the check itself stands.
            return false;
        }
    }

    /** The last check of a boat, or null. */
    public @Nullable String findLast(String boat) {
        String name = "-" + Slug.of(boat) + ENDING;
        List<Path> files = files();
        for (int i = files.size() - 1; i >= 0; i--) {
            if (files.get(i).getFileName().toString().endsWith(name)) {
                try {
                    return Files.readString(files.get(i));
                } catch (IOException e) {
                    throw new UncheckedIOException("cannot read " + files.get(i) + ": " + e.getMessage(), e);
                }
            }
        }
        return null;
    }

    private List<Path> files() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            List<Path> files = new ArrayList<>(
                    entries.filter(file -> file.getFileName().toString().matches("\\d{3}-.*\\.json"))
                            .toList());
            files.sort(null);
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + folder + ": " + e.getMessage(), e);
        }
    }
}
