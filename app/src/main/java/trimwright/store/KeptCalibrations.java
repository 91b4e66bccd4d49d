package trimwright.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trimwright.text.JsonOut;

/**
 * Calibrations that were accepted for a session, and taken back: {@code calibration/001.json} and so on, in order, nothing
 * ever replaced. The last one accepted and not taken back is in force.
 */
public final class KeptCalibrations {
    private static final String UNDO = "calibration-undo/1";

    private final Path folder;

    KeptCalibrations(Path session) {
        folder = session.resolve("calibration");
    }

    /** Puts a calibration in force. */
    public void accept(String text) {
        write(text);
    }

    /** Takes the one in force back, so that the one accepted before it is; false where none is. */
    public boolean undo() {
        if (findInForce() == null) {
            return false;
        }
        write(JsonOut.text(JsonOut.document(UNDO)));
        return true;
    }

    /** The text of the one in force, or null. */
    public @Nullable String findInForce() {
        Deque<String> accepted = new ArrayDeque<>();
        for (Path file : files()) {
            try {
                String text = Files.readString(file);
                JsonNode document = JsonOut.read(text);
                if (document.path("schema").asText().equals(UNDO)) {
                    accepted.poll();
                } else {
                    accepted.push(text);
                }
            } catch (IOException e) {
                throw new UncheckedIOException("cannot read " + file + ": " + e.getMessage(), e);
            }
        }
        return accepted.peek();
    }

    private void write(String text) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot write " + folder + ": " + e.getMessage(), e);
        }
        int number = files().size() + 1;
        Durable.replace(folder.resolve(String.format(Locale.ROOT, "%03d.json", number)), text);
    }

    private List<Path> files() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            List<Path> files = new ArrayList<>(
                    entries.filter(file -> file.getFileName().toString().matches("\\d{3}\\.json"))
                            .toList());
            files.sort(null);
            return files;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + folder + ": " + e.getMessage(), e);
        }
    }
}
