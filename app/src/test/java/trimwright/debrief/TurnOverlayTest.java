package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.segment.TurnKind;
import trimwright.text.JsonOut;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.wind.SyntheticTrack;

/** A tack made by hand: everything in the overlay is known. */
class TurnOverlayTest {
    /** Steady for a minute, then from wind from starboard to port in six seconds: head to wind after three. */
    private static BoatTrack tack(String path) {
        return new SyntheticTrack(200, 10)
                .wind(t -> 8, t -> 0)
                .heading(t -> t < 60 ? -45 : t > 66 ? 45 : -45 + 15 * (t - 60))
                .speed(t -> t < 60 ? 10 : 8)
                .attitude(t -> t < 63 ? 5 : -5, t -> 0)
                .with(path, t -> Math.toRadians(t < 64.5 ? 25 : -25))
                .build();
    }

    private static ObjectNode overlay(BoatTrack track) {
        ObjectNode document = TurnOverlay.of(Debrief.of(List.of(track), DebriefOptions.WITHOUT_BOAT), TurnKind.TACK);
        return (ObjectNode) JsonOut.read(JsonOut.text(document));
    }

    private static double at(JsonNode document, String row, double seconds) {
        int i = (int) Math.round(
                (seconds + TurnOverlay.BEFORE) / document.path("step_s").asDouble());
        return document.path("turns").get(0).path("values").path(row).get(i).asDouble();
    }

    @Test
    void noughtIsWhereTheWindCameOver() {
        ObjectNode document = overlay(tack(Paths.CAMBER));
        JsonNode turn = document.path("turns").get(0);
        assertEquals(1, document.path("turns").size());
        assertEquals(63, turn.path("at_s").asDouble(), 0.15);
        assertEquals("bow", turn.path("wind_over").asText());
        assertEquals(1.5, turn.path("camber_after_wind_s").asDouble(), 0.2);
        // Signs are those of before the turn: wind, heel to windward and depth to leeward go from plus to minus.
        assertEquals(25, at(document, "camber_deg", 1), 0.01);
        assertEquals(-25, at(document, "camber_deg", 2), 0.01);
        assertEquals(5, at(document, "heel_deg", -1), 0.01);
        assertTrue(at(document, "awa_deg", -5) > 15 && at(document, "awa_deg", 5) < -15);
        assertEquals(15, at(document, "turn_rate_deg_per_s", 0), 0.5);
        assertEquals(10 * 3600 / 1852.0, at(document, "boat_speed_kn", -8), 0.01);
        assertEquals(8 * 3600 / 1852.0, at(document, "boat_speed_kn", 8), 0.01);
    }

    @Test
    void whatIsNotLoggedHasNoRow() {
        JsonNode values = overlay(tack(Paths.RIDE_HEIGHT)).path("turns").get(0).path("values");
        assertFalse(values.has("camber_deg"));
        assertTrue(values.has("ride_height_m"));
    }
}
