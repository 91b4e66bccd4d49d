package trimwright.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Texts computed from a session and kept with it under all that they depend on. A folder appears whole, by one
 * renaming, and is never changed. Whatever is wrong with it only costs the time of computing again, so nothing here
 * fails: a library that may only be read keeps nothing.
 */
public final class Derived {
    private static final String INPUTS = "inputs.txt";
    private static final String ASIDE = ".new-";

    /** Chosen: a few references and boat files, before and after a change; some megabytes each for a race of six boats. */
    private static final int KEPT = 8;

    /** What another program has left aside for as long is no work in hand any more (chosen). */
    private static final Duration LEFT = Duration.ofHours(1);

    private final Path folder;

    Derived(Path folder) {
        this.folder = folder;
    }

    /**
     * The text kept under that name, or null.
     *
     * @param inputs all that it depends on; a text kept under others is never given, whatever the folders' names
     */
    public @Nullable String find(String inputs, String name) {
        Path place = placeOf(inputs);
        try {
            return Files.readString(place.resolve(INPUTS)).equals(inputs)
                    ? Files.readString(place.resolve(name))
                    : null;
        } catch (IOException | UncheckedIOException e) {
            return null;
        }
    }

    /** All that texts are kept under, those kept last first. */
    public List<String> inputs() {
        List<String> found = new ArrayList<>();
        try {
            for (Path place : whole()) {
                found.add(Files.readString(place.resolve(INPUTS)));
            }
        } catch (IOException | UncheckedIOException e) {
            // What cannot be read is not there.
            return found;
        }
        return found;
    }

    /** Keeps texts by name, if nobody has meanwhile. */
    public void keep(String inputs, Map<String, String> texts) {
        Path place = placeOf(inputs);
        Path aside = folder.resolve(ASIDE + UUID.randomUUID());
        try {
            clear();
            Files.createDirectories(aside);
            Durable.replace(aside.resolve(INPUTS), inputs);
            texts.forEach((name, text) -> Durable.replace(aside.resolve(name), text));
            if (Files.exists(place)) {
                delete(place);
            }
            Files.move(aside, place, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException | UncheckedIOException e) {
            // Nothing is kept then; the next call computes again.
            return;
        }
    }

    private Path placeOf(String inputs) {
        byte[] digest = LibraryWriter.sha256().digest(inputs.getBytes(StandardCharsets.UTF_8));
        return folder.resolve(HexFormat.of().formatHex(digest).substring(0, 16));
    }

    /** The oldest go, and what a killed program left aside. */
    private void clear() throws IOException {
        List<Path> whole = whole();
        List<Path> leaving = new ArrayList<>(whole.subList(Math.min(KEPT - 1, whole.size()), whole.size()));
        for (Path entry : entries()) {
            boolean isAside = entry.getFileName().toString().startsWith(ASIDE);
            if (isAside && made(entry).toInstant().isBefore(Instant.now().minus(LEFT))) {
                leaving.add(entry);
            }
        }
        for (Path entry : leaving) {
            delete(entry);
        }
    }

    /** Folders that are whole, the newest first. */
    private List<Path> whole() throws IOException {
        return entries().stream()
                .filter(entry -> !entry.getFileName().toString().startsWith(ASIDE))
                .sorted(Comparator.comparing(Derived::made).reversed())
                .toList();
    }

    private List<Path> entries() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.toList();
        }
    }

    private static FileTime made(Path folder) {
        try {
            return Files.getLastModifiedTime(folder);
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> inside = Files.walk(folder)) {
            for (Path path : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(path);
            }
        }
    }
}
