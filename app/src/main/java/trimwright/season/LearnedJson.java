package trimwright.season;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import trimwright.learned.LearnedPlace;
import trimwright.learned.LearnedTargets;
import trimwright.text.JsonOut;
import trimwright.units.Units;

/** Learned targets as {@code learned-targets/1}, there and back. */
public final class LearnedJson {
    static final String SCHEMA = "learned-targets/1";

    private LearnedJson() {}

    public static ObjectNode document(Learned learned) {
        ObjectNode document = JsonOut.document(SCHEMA, learned.boatHash());
        document.put("boat", learned.boat());
        document.put("wing", learned.wing());
        document.put("foils", learned.foils());
        document.put("crew_mass_kg", learned.crewMass());
        ArrayNode sessions = document.putArray("sessions");
        for (Learned.Used used : learned.sessions()) {
            ObjectNode node = sessions.addObject().put("id", used.id());
            ArrayNode boats = node.putArray("boats");
            used.boats().forEach(boats::add);
            node.put("steady_s", used.seconds());
        }
        ArrayNode places = document.putArray("places");
        for (LearnedPlace place : learned.targets().places()) {
            places.addObject()
                    .put("tws_kn", Units.toKnots(place.wind()))
                    .put("twa_deg", Units.toDegrees(place.angle()))
                    .put("log_speed_ratio", place.logRatio())
                    .put("log_error_ratio", place.error())
                    .put("support_ratio", place.support())
                    .put("supported", place.isSupported())
                    .put("steady_s", place.seconds())
                    .put("sessions", place.sessions());
        }
        return document;
    }

    /**
     * Says in a {@code target-book/1} that its speeds were learnt, and of each foiling point what its speed rests on: that of the
     * nearest place.
     */
    public static void mark(ObjectNode book, Learned learned) {
        book.put("learned_sessions", learned.sessions().size());
        for (JsonNode node : book.path("points")) {
            if (node.path("foiling").asBoolean()) {
                LearnedPlace place = learned.targets()
                        .nearest(
                                Units.fromKnots(node.path("tws_kn").asDouble()),
                                Units.fromDegrees(node.path("twa_deg").asDouble()));
                ((ObjectNode) node)
                        .put("learned", place.isSupported())
                        .put("learned_error_ratio", place.error())
                        .put("learned_support_ratio", place.support())
                        .put("learned_steady_s", place.seconds())
                        .put("learned_sessions", place.sessions());
            }
        }
    }

    /** @throws IllegalArgumentException naming the key that is missing or something else */
    static Learned read(JsonNode document) {
        List<Learned.Used> sessions = new ArrayList<>();
        for (JsonNode node : document.path("sessions")) {
            List<String> boats = new ArrayList<>();
            node.path("boats").forEach(boat -> boats.add(boat.asText()));
            sessions.add(new Learned.Used(word(node, "id"), boats, number(node, "steady_s")));
        }
        List<Double> winds = new ArrayList<>();
        List<Double> angles = new ArrayList<>();
        List<LearnedPlace> places = new ArrayList<>();
        for (JsonNode node : document.path("places")) {
            double wind = Units.fromKnots(number(node, "tws_kn"));
            double angle = Units.fromDegrees(number(node, "twa_deg"));
            if (winds.isEmpty() || wind > winds.get(winds.size() - 1)) {
                winds.add(wind);
            }
            if (winds.size() == 1) {
                angles.add(angle);
            }
            places.add(new LearnedPlace(
                    wind,
                    angle,
                    number(node, "log_speed_ratio"),
                    number(node, "log_error_ratio"),
                    number(node, "support_ratio"),
                    number(node, "steady_s"),
                    (int) number(node, "sessions")));
        }
        return new Learned(
                word(document, "boat"),
                word(document, "wing"),
                word(document, "foils"),
                number(document, "crew_mass_kg"),
                word(document.path("model"), "boat_hash"),
                sessions,
                new LearnedTargets(winds, angles, places));
    }

    private static String word(JsonNode node, String key) {
        if (!node.path(key).isTextual()) {
            throw new IllegalArgumentException(key);
        }
        return node.path(key).asText();
    }

    private static double number(JsonNode node, String key) {
        if (!node.path(key).isNumber()) {
            throw new IllegalArgumentException(key);
        }
        return node.path(key).asDouble();
    }
}
