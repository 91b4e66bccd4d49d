package trimwright.call;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The crew's own words for each call, five at most; {@code {n}} stands for the degrees.
 *
 * @param words one sentence a kind
 */
public record TalkCard(Map<CallKind, String> words) {
    /** Words that a call may have: what is taken in while the hands are busy. */
    public static final int MOST_WORDS = 5;

    /** Where the degrees stand. */
    public static final String DEGREES = "{n}";

    public TalkCard {
        EnumMap<CallKind, String> copy = new EnumMap<>(CallKind.class);
        copy.putAll(words);
        for (CallKind kind : CallKind.values()) {
            String sentence = copy.get(kind);
            if (sentence == null || !fits(sentence)) {
                throw new IllegalArgumentException("talk card: " + kind + " is said by " + sentence);
            }
        }
        words = copy;
    }

    /** Whether a sentence is one to five words. */
    public static boolean fits(String sentence) {
        String trimmed = sentence.trim();
        return !trimmed.isEmpty() && trimmed.split("\\s+", -1).length <= MOST_WORDS;
    }

    /** What is said for a call. */
    public String say(Call call) {
        @Nullable String sentence = words.get(call.kind());
        return sentence == null ? "" : sentence.replace(DEGREES, Integer.toString(call.degrees()));
    }
}
