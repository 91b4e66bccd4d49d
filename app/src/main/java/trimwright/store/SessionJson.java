package trimwright.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** {@code session/1} to and from {@link SessionInfo}; the layout is described in docs/formats.md. */
public final class SessionJson {
    private static final String SCHEMA = "session/1";
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private SessionJson() {}

    /** All that a library says of a session, as its session.json. */
    public static ObjectNode document(SessionInfo session) {
        ObjectNode root = JsonOut.document(SCHEMA);
        times(session, root);
        ArrayNode boats = root.putArray("boats");
        for (BoatInfo boat : session.boats()) {
            ObjectNode node = boats.addObject();
            node.put("boat", boat.boat());
            ArrayNode groups = node.putArray("groups");
            boat.groups().forEach(group -> write(group, groups.addObject()));
        }
        ArrayNode sources = root.putArray("sources");
        session.sources().forEach(source -> write(source, sources.addObject()));
        return root;
    }

    /** Id, times and their offset: what {@code session/1} and {@code sessions/1} say alike. */
    static void times(SessionInfo session, ObjectNode node) {
        node.put("session", session.id());
        node.put("start_utc", session.start().toString());
        node.put("end_utc", session.end().toString());
        node.put("utc_offset_s", session.offset().seconds());
        node.put("utc_offset_from", session.offset().fromWord());
    }

    private static void write(GroupInfo group, ObjectNode node) {
        node.put("group", group.name());
        node.put("file", group.file());
        node.put("rows", group.rows());
        node.put("start_ns", group.startNanos());
        node.put("end_ns", group.endNanos());
        ArrayNode paths = node.putArray("channels");
        group.paths().forEach(paths::add);
    }

    private static void write(SourceInfo source, ObjectNode node) {
        node.put("sha256", source.sha256());
        node.put("bytes", source.bytes());
        findings(source, node);
    }

    /** A source's name and what was found in it: what {@code session/1} and {@code sessions/1} say alike. */
    static void findings(SourceInfo source, ObjectNode node) {
        node.put("name", source.name());
        node.put("kind", source.kind());
        node.put("lines", source.lines());
        ObjectNode issues = node.putObject("issues");
        source.issues().forEach(issues::put);
        ArrayNode notes = node.putArray("notes");
        source.notes().forEach(notes::add);
    }

    /** @param file named in the message of a {@link UserInputException} when the text is not a session of this version */
    static SessionInfo read(String text, Path file) {
        try {
            JsonNode root = MAPPER.readTree(text);
            String schema = root.path("schema").asText();
            if (!schema.equals(SCHEMA)) {
                throw new UserInputException(Texts.of("store.newer", file, schema, SCHEMA));
            }
            List<BoatInfo> boats = new ArrayList<>();
            for (JsonNode boat : root.required("boats")) {
                List<GroupInfo> groups = new ArrayList<>();
                for (JsonNode group : boat.required("groups")) {
                    groups.add(readGroup(group));
                }
                boats.add(new BoatInfo(boat.required("boat").asText(), groups));
            }
            List<SourceInfo> sources = new ArrayList<>();
            for (JsonNode source : root.required("sources")) {
                sources.add(readSource(source));
            }
            return new SessionInfo(
                    root.required("session").asText(),
                    Instant.parse(root.required("start_utc").asText()),
                    Instant.parse(root.required("end_utc").asText()),
                    readOffset(root),
                    boats,
                    sources);
        } catch (JsonProcessingException | IllegalArgumentException | DateTimeException e) {
            throw new UserInputException(Texts.of("store.session_damaged", file, firstLine(e)));
        }
    }

    private static String firstLine(Exception e) {
        String message = e.getMessage() == null ? "unreadable" : e.getMessage();
        return message.lines().findFirst().orElse("unreadable");
    }

    private static UtcOffset readOffset(JsonNode root) {
        return new UtcOffset(
                root.required("utc_offset_s").asInt(),
                UtcOffset.From.valueOf(root.required("utc_offset_from").asText().toUpperCase(Locale.ROOT)));
    }

    private static GroupInfo readGroup(JsonNode node) {
        return new GroupInfo(
                node.required("group").asText(),
                node.required("file").asText(),
                node.required("rows").asInt(),
                node.required("start_ns").asLong(),
                node.required("end_ns").asLong(),
                texts(node.required("channels")));
    }

    private static SourceInfo readSource(JsonNode node) {
        Map<String, Long> issues = new TreeMap<>();
        node.required("issues")
                .properties()
                .forEach(entry -> issues.put(entry.getKey(), entry.getValue().asLong()));
        return new SourceInfo(
                node.required("sha256").asText(),
                node.required("name").asText(),
                node.required("kind").asText(),
                node.required("bytes").asLong(),
                node.required("lines").asLong(),
                issues,
                texts(node.required("notes")));
    }

    private static List<String> texts(JsonNode array) {
        List<String> texts = new ArrayList<>();
        array.forEach(node -> texts.add(node.asText()));
        return texts;
    }
}
