package trimwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.text.UserInputException;

class MomentsTest {
    private static final SessionInfo SESSION = new SessionInfo(
            "2027-01-15-two",
            Instant.parse("2027-01-15T12:00:00Z"),
            Instant.parse("2027-01-15T12:10:00Z"),
            new UtcOffset(0, UtcOffset.From.LONGITUDE),
            List.of(new BoatInfo("Dunlin", List.of())),
            List.of());

    @TempDir
    Path folder;

    private Moments moments() {
        return new Moments(folder.resolve("moments.json"), SESSION);
    }

    private static Moment keep(Moments moments, double start, @Nullable String boat, String note, String... tags) {
        return moments.keep(start, 20, boat, note, List.of(tags));
    }

    @Test
    void theyComeBackInOrderOfTimeFromTheDisk() {
        keep(moments(), 300, "dunlin", " late ease ", "gust", "gust", "");
        keep(moments(), 60, null, "start");
        List<Moment> kept = moments().list();
        assertEquals(List.of("m2", "m1"), kept.stream().map(Moment::id).toList());
        assertNull(kept.get(0).boat());
        assertEquals("Dunlin", kept.get(1).boat());
        assertEquals("late ease", kept.get(1).note());
        assertEquals(List.of("gust"), kept.get(1).tags());
        assertTrue(kept.get(1).hasTags(List.of("GUST")));
        assertFalse(kept.get(0).hasTags(List.of("gust")));
    }

    @Test
    void aDroppedIdIsNotGivenToAnotherWhileALaterOneStands() {
        keep(moments(), 10, null, "one");
        keep(moments(), 20, null, "two");
        moments().drop("m1");
        assertEquals("m3", keep(moments(), 30, null, "three").id());
        assertThrows(UserInputException.class, () -> moments().drop("m1"));
    }

    @Test
    void whatIsNoMomentIsRefusedAndNothingIsLost() {
        keep(moments(), 10, null, "one");
        Moments moments = moments();
        assertThrows(UserInputException.class, () -> keep(moments, 10, null, " "));
        assertThrows(UserInputException.class, () -> keep(moments, 10, null, "a\nb"));
        assertThrows(UserInputException.class, () -> keep(moments, 601, null, "after the end"));
        assertThrows(UserInputException.class, () -> keep(moments, Double.NaN, null, "when"));
        assertThrows(UserInputException.class, () -> keep(moments, 10, "godwit", "not here"));
        assertThrows(
                UserInputException.class, () -> keep(moments, 10, null, "tags", "1", "2", "3", "4", "5", "6", "7"));
        assertEquals(1, moments().list().size());
    }

    @Test
    void aFileOfAnotherVersionIsNotOverwritten() throws IOException {
        Path file = folder.resolve("moments.json");
        Files.writeString(file, "{\"schema\": \"moments/9\"}");
        assertThrows(UserInputException.class, () -> keep(moments(), 10, null, "one"));
        assertEquals("{\"schema\": \"moments/9\"}", Files.readString(file));
    }
}
