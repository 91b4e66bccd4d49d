package trimwright.debrief;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.store.Durable;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** What crews said that they will change: {@code crew-lines.json} of a library, a line for each boat and session. */
public final class CrewLines {
    private static final String NAME = "crew-lines.json";

    private final Path file;

    /** @param library its folder */
    public CrewLines(Path library) {
        file = library.resolve(NAME);
    }

    /** The last one said by that boat's crew after a session that began before this one, or null. */
    public @Nullable CrewLine before(String boat, String startUtc) {
        return read().stream()
                .filter(line -> line.boat().equals(boat) && line.startUtc().compareTo(startUtc) < 0)
                .max(Comparator.comparing(CrewLine::startUtc))
                .orElse(null);
    }

    /** The one said after that session, or null. */
    public @Nullable CrewLine after(String boat, String session) {
        return read().stream()
                .filter(line -> line.boat().equals(boat) && line.session().equals(session))
                .findFirst()
                .orElse(null);
    }

    /** Keeps a line; it takes the place of another of the same boat and session. */
    public void keep(CrewLine said) {
        List<CrewLine> lines = new ArrayList<>(read());
        lines.removeIf(line -> line.boat().equals(said.boat()) && line.session().equals(said.session()));
        lines.add(said);
        ObjectNode document = JsonOut.document("crew-lines/1");
        ArrayNode list = document.putArray("lines");
        lines.forEach(line -> line.put(list.addObject()));
        Durable.replace(file, JsonOut.text(document));
    }

    private List<CrewLine> read() {
        if (!Files.exists(file)) {
            return List.of();
        }
        try {
            JsonNode document = JsonOut.mapper().readTree(file.toFile());
            if (!document.path("schema").asText().equals("crew-lines/1")) {
                throw new UserInputException(Texts.of("quick.lines_unreadable", file));
            }
            List<CrewLine> lines = new ArrayList<>();
            document.path("lines").forEach(node -> lines.add(CrewLine.of(node)));
            return lines;
        } catch (JsonProcessingException e) {
            throw new UserInputException(Texts.of("quick.lines_unreadable", file), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
