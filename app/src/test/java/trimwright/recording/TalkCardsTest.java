package trimwright.recording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.BoatMarks;
import trimwright.boat.ControlMarks;
import trimwright.boat.Limits;
import trimwright.boat.MarkScale;
import trimwright.boat.MarkedControl;
import trimwright.call.Call;
import trimwright.call.CallKind;
import trimwright.call.TalkCard;
import trimwright.live.LiveBoat;
import trimwright.segment.Tack;
import trimwright.text.UserInputException;

class TalkCardsTest {
    private static Path card(Path folder, String text) throws IOException {
        return Files.writeString(folder.resolve("words.txt"), text);
    }

    private static Call call(CallKind kind) {
        return new Call(1_778_328_000_000_000_000L, kind, 3, 0.5, 0.125, 0.25, 0.5, Double.NaN);
    }

    @Test
    void whatACardDoesNotNameIsSaidInTheProgramsWords(@TempDir Path folder) throws IOException {
        TalkCard words = TalkCards.read(card(folder, "# ours\n\ntwist_more = open the top {n}\n"));
        assertEquals("open the top 3", words.say(call(CallKind.TWIST_MORE)));
        assertEquals("Power up", words.say(call(CallKind.POWER_UP)));
    }

    @Test
    void aCallInMarksNeverAsksForMoreThanItsDegreesAndFallsBackToThem() {
        MarkScale scale = new MarkScale(List.of(new MarkScale.Point(0, 0), new MarkScale.Point(1, 60)));
        ControlMarks twist = new ControlMarks(MarkedControl.TWIST, "steps", 0.5, scale, scale);
        LiveMarks marks = new LiveMarks(new BoatMarks(List.of(new BoatMarks.OfWing(null, twist))), "tall");
        Call call = call(CallKind.TWIST_MORE);
        // Three degrees are 3.14 steps of a sixtieth of a radian.
        assertEquals("3 steps", marks.amount(call, Tack.PORT));
        assertNull(marks.amount(call, null));
        assertNull(marks.amount(call(CallKind.CAMBER_MORE), Tack.PORT));
        assertNull(marks.amount(call(CallKind.EASE), Tack.PORT));
        assertEquals("Twist 3 steps more", TalkCards.usual().say(call, "3 steps"));
        assertEquals("Twist 3 more", TalkCards.usual().say(call, "3 of our steps"));
    }

    @Test
    void whatIsWrongInACardIsSaidWithItsLine(@TempDir Path folder) throws IOException {
        for (String wrong : new String[] {"ease = a b c d e f", "ease =", "easy = ease", "ease"}) {
            Path file = card(folder, "# ours\n" + wrong + "\n");
            String said = String.valueOf(assertThrows(UserInputException.class, () -> TalkCards.read(file))
                    .getMessage());
            assertTrue(said.contains("words.txt:2:"), said);
            assertEquals(1, said.lines().count());
        }
        assertThrows(UserInputException.class, () -> TalkCards.read(folder.resolve("none.txt")));
    }

    @Test
    void theNoteOfACallHasTheStateThatMadeIt() {
        String note = new String(Notes.call(call(CallKind.EASE), "Ease power"), StandardCharsets.UTF_8);
        assertEquals("call\tease\t3\t0.500\t0.125\t0.2500\t0.5000\tNaN\tEase power", note);
    }

    @Test
    void whereTheEventAllowsNoneThePageSaysSo() {
        Limits limits = new Limits(1, 1, -1, 0, 1, -1, 1, null, null, null, null);
        LiveCalls calls = new LiveCalls(limits, TalkCards.usual(), LiveCalls.Allowed.NO, Long.MIN_VALUE);
        LiveBoat live = new LiveBoat(null, null, null);
        assertNull(calls.step(live.figures(), Double.NaN));
        Map<String, Object> keys = new HashMap<>();
        calls.put(keys);
        assertEquals("not_allowed", keys.get("call.silence"));
        assertEquals(0L, keys.get("call.number"));
    }
}
