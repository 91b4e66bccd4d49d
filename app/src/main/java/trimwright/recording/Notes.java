package trimwright.recording;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import trimwright.call.Call;

/** Notes of a journal: a word, a tab, what there is to say. The words are part of {@code journal/1}. */
final class Notes {
    private Notes() {}

    static byte[] event(EventMode mode) {
        return of("event", mode.key());
    }

    static byte[] input(InputAddress input, InputState state, String reason) {
        return of(
                "input",
                input.text() + " " + state.name().toLowerCase(Locale.ROOT) + (reason.isEmpty() ? "" : ": " + reason));
    }

    static byte[] clockSet(long nanos) {
        return of("clock", String.format(Locale.ROOT, "set by %.3f s; times of arrival go on evenly", nanos / 1e9));
    }

    static byte[] lost(long bytes) {
        return of("lost", bytes + " bytes that the disk did not take");
    }

    static byte[] mark(double seconds, String text) {
        return String.format(Locale.ROOT, "%.0f\t%s", seconds, text).getBytes(StandardCharsets.UTF_8);
    }

    /** A call and the state that made it: kind, degrees, loss and its error (m/s), value and aim (rad, N m), promise (m/s), words. */
    static byte[] call(Call call, String said) {
        return of(
                "call",
                String.format(
                        Locale.ROOT,
                        "%s\t%d\t%.3f\t%.3f\t%.4f\t%.4f\t%.3f\t%s",
                        TalkCards.word(call.kind()),
                        call.degrees(),
                        call.lost(),
                        call.lostError(),
                        call.value(),
                        call.aim(),
                        call.promise(),
                        said));
    }

    private static byte[] of(String word, String text) {
        return (word + "\t" + text).getBytes(StandardCharsets.UTF_8);
    }
}
