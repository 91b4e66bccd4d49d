package trimwright.call;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The crew's own words for each call, five at most; {@code {n}} stands for by how much: degrees, or marks where the boat
 * has them.
 *
 * @param words one sentence a kind
 * @param starts what is shown before a start
 */
public record TalkCard(Map<CallKind, String> words, Map<StartWord, String> starts) {
    /** Words that a call may have: what is taken in while the hands are busy. */
    public static final int MOST_WORDS = 5;

    /** Where it stands by how much. */
    public static final String AMOUNT = "{n}";

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
        EnumMap<StartWord, String> copied = new EnumMap<>(StartWord.class);
        copied.putAll(starts);
        for (StartWord word : StartWord.values()) {
            String sentence = copied.get(word);
            if (sentence == null || !fits(sentence)) {
                throw new IllegalArgumentException("talk card: " + word + " is said by " + sentence);
            }
        }
        starts = copied;
    }

    /** Whether a sentence is one to five words. */
    public static boolean fits(String sentence) {
        String trimmed = sentence.trim();
        return !trimmed.isEmpty() && trimmed.split("\\s+", -1).length <= MOST_WORDS;
    }

    /** What is shown before a start. */
    public String say(StartWord word) {
        @Nullable String sentence = starts.get(word);
        return sentence == null ? "" : sentence;
    }

    /** What is said for a call, in degrees. */
    public String say(Call call) {
        return say(call, Integer.toString(call.degrees()));
    }

    /**
     * What is said for a call.
     *
     * @param amount by how much: a number, with its unit behind it where that shall be said too; the unit is left out where the
     *     sentence would get too long
     */
    public String say(Call call, String amount) {
        @Nullable String sentence = words.get(call.kind());
        if (sentence == null) {
            return "";
        }
        String said = sentence.replace(AMOUNT, amount);
        int blank = amount.indexOf(' ');
        return fits(said) || blank < 0 ? said : sentence.replace(AMOUNT, amount.substring(0, blank));
    }
}
