package trimwright.recording;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

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

    private static byte[] of(String word, String text) {
        return (word + "\t" + text).getBytes(StandardCharsets.UTF_8);
    }
}
