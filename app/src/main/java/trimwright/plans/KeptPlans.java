package trimwright.plans;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import trimwright.store.Durable;
import trimwright.store.Slug;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** The turn plans of a library, one file each in its folder {@code turn-plans}; one of the same boat, wing, turn and wind takes the place of another. */
public final class KeptPlans {
    private static final String FOLDER = "turn-plans";
    private static final String SCHEMA = "turn-plan/1";
    private static final String ENDING = ".json";

    private final Path folder;

    /** @param library its folder */
    public KeptPlans(Path library) {
        folder = library.resolve(FOLDER);
    }

    /** All that are kept, by name. */
    public List<KeptPlan> list() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .map(KeptPlans::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Those of a boat's wing. */
    public List<KeptPlan> list(String boat, String wing) {
        return list().stream()
                .filter(plan -> plan.boat().equals(boat) && plan.wing().equals(wing))
                .toList();
    }

    /** Keeps a plan, and says where. */
    public Path keep(ObjectNode document) {
        String name = String.join(
                "-",
                Slug.of(document.path("boat").asText()),
                Slug.of(document.path("wing").asText()),
                document.path("kind").asText(),
                document.path("begin").asText(),
                String.format(Locale.ROOT, "%.1fkn", document.path("tws_kn").asDouble()));
        Path file = folder.resolve(name + ENDING);
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Durable.replace(file, JsonOut.text(document));
        return file;
    }

    /** @throws UserInputException where the file is no turn plan of this program */
    public static KeptPlan read(Path file) {
        String name = file.getFileName().toString();
        try {
            String text = Files.readString(file);
            JsonNode document = JsonOut.mapper().readTree(text);
            if (!document.path("schema").asText().equals(SCHEMA)) {
                throw new UserInputException(Texts.of("plans.no_plan", file, SCHEMA));
            }
            return KeptPlan.of(name, text, document);
        } catch (JsonProcessingException e) {
            throw new UserInputException(Texts.of("plans.no_plan", file, SCHEMA), e);
        } catch (IllegalArgumentException e) {
            throw new UserInputException(Texts.of("plans.no_key", file, String.valueOf(e.getMessage())), e);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("plans.unreadable", file), e);
        }
    }
}
