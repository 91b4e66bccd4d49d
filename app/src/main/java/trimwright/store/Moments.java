package trimwright.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** The moments of one session: {@code moments/1} in its folder. What people wrote; nothing computed takes their place. */
public final class Moments {
    private static final String SCHEMA = "moments/1";

    private final Path file;
    private final SessionInfo session;

    Moments(Path file, SessionInfo session) {
        this.file = file;
        this.session = session;
    }

    /** In order of time. */
    public synchronized List<Moment> list() {
        if (!Files.exists(file)) {
            return List.of();
        }
        try {
            JsonNode document = JsonOut.mapper().readTree(file.toFile());
            if (!document.path("schema").asText().equals(SCHEMA)) {
                throw new UserInputException(Texts.of("moment.unreadable", file));
            }
            List<Moment> moments = new ArrayList<>();
            document.path("moments").forEach(node -> moments.add(moment(node)));
            moments.sort(Comparator.comparingDouble(Moment::start).thenComparing(Moment::id));
            return moments;
        } catch (JsonProcessingException e) {
            throw new UserInputException(Texts.of("moment.unreadable", file), e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** That one; throws {@link UserInputException} where there is none. */
    public Moment get(String id) {
        return list().stream()
                .filter(moment -> moment.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new UserInputException(Texts.of("moment.none_such", id, session.id())));
    }

    /**
     * Keeps a new one.
     *
     * @param start from the session's begin (s)
     * @param duration (s)
     * @param boat of the session, null for all
     */
    public synchronized Moment keep(
            double start, double duration, @Nullable String boat, String note, List<String> tags) {
        BoatInfo info = boat == null ? null : session.findBoat(boat);
        if (boat != null && info == null) {
            throw new UserInputException(Texts.of("moment.no_boat", session.id(), boat));
        }
        double length = Duration.between(session.start(), session.end()).toMillis() / 1e3;
        if (start > length) {
            throw new UserInputException(Texts.of("moment.outside", session.id(), length / 60));
        }
        List<Moment> moments = new ArrayList<>(list());
        int number =
                moments.stream().mapToInt(moment -> number(moment.id())).max().orElse(0) + 1;
        Moment moment = new Moment("m" + number, start, duration, info == null ? null : info.boat(), note, tags);
        moments.add(moment);
        write(moments);
        return moment;
    }

    /** Drops one; throws {@link UserInputException} where there is none. */
    public synchronized void drop(String id) {
        Moment dropped = get(id);
        List<Moment> moments = new ArrayList<>(list());
        moments.remove(dropped);
        write(moments);
    }

    /** As a document: of the file, of the command and of the page. */
    public static ObjectNode document(SessionInfo session, List<Moment> moments) {
        ObjectNode document = JsonOut.document(SCHEMA);
        document.put("session", session.id());
        document.put("start_utc", session.start().toString());
        ArrayNode list = document.putArray("moments");
        for (Moment moment : moments) {
            ObjectNode node = list.addObject()
                    .put("id", moment.id())
                    .put("start_s", moment.start())
                    .put("duration_s", moment.duration())
                    .put("boat", moment.boat())
                    .put("note", moment.note());
            ArrayNode tags = node.putArray("tags");
            moment.tags().forEach(tags::add);
        }
        return document;
    }

    private void write(List<Moment> moments) {
        moments.sort(Comparator.comparingDouble(Moment::start).thenComparing(Moment::id));
        Durable.replace(file, JsonOut.text(document(session, moments)));
    }

    private static Moment moment(JsonNode node) {
        List<String> tags = new ArrayList<>();
        node.path("tags").forEach(tag -> tags.add(tag.asText()));
        return new Moment(
                node.path("id").asText(),
                node.path("start_s").asDouble(),
                node.path("duration_s").asDouble(),
                node.path("boat").isTextual() ? node.path("boat").asText() : null,
                node.path("note").asText(),
                tags);
    }

    private static int number(String id) {
        return id.matches("m[0-9]{1,6}") ? Integer.parseInt(id.substring(1)) : 0;
    }
}
