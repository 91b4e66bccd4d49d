package trimwright.store;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * A marked stretch of a session with a note.
 *
 * @param id within the session
 * @param start from the session's begin (s), not negative
 * @param duration (s), 1 to 3600
 * @param boat that it is about, null for all
 * @param note what is to be seen there, 1 to 200 characters
 * @param tags words to find it by, at most 6
 */
public record Moment(
        String id, double start, double duration, @Nullable String boat, String note, List<String> tags) {
    private static final int LONGEST_NOTE = 200;
    private static final int LONGEST_TAG = 24;
    private static final int MOST_TAGS = 6;
    private static final double LONGEST = 3600;

    /** Throws {@link UserInputException} with one line where a part is not as it should be. */
    public Moment {
        note = note.strip();
        tags = tags.stream()
                .map(String::strip)
                .filter(tag -> !tag.isEmpty())
                .distinct()
                .toList();
        if (note.isEmpty() || note.length() > LONGEST_NOTE || note.chars().anyMatch(Character::isISOControl)) {
            throw new UserInputException(Texts.of("moment.note", LONGEST_NOTE));
        }
        if (!(start >= 0) || !(duration >= 1 && duration <= LONGEST)) {
            throw new UserInputException(Texts.of("moment.length", (int) LONGEST));
        }
        if (tags.size() > MOST_TAGS || tags.stream().anyMatch(tag -> tag.length() > LONGEST_TAG || tag.contains(","))) {
            throw new UserInputException(Texts.of("moment.tags", MOST_TAGS, LONGEST_TAG));
        }
    }

    /** Whether it has all these tags, upper or lower case. */
    public boolean hasTags(List<String> asked) {
        return asked.stream().allMatch(tag -> tags.stream().anyMatch(tag::equalsIgnoreCase));
    }
}
