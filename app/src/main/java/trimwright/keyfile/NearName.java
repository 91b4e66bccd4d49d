package trimwright.keyfile;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** The name that a person probably meant. */
public final class NearName {
    /** Chosen: three slips of the finger, or the right word with the wrong unit. */
    private static final int MOST_EDITS = 3;

    private NearName() {}

    /** The nearest of the names by single-letter edits (Levenshtein's distance), or null if none is near. */
    public static @Nullable String find(String given, List<String> names) {
        String best = null;
        int least = Math.min(MOST_EDITS, given.length() / 2) + 1;
        for (String name : names) {
            int edits = withoutUnit(name).equals(withoutUnit(given)) ? 0 : edits(given, name);
            if (edits < least) {
                least = edits;
                best = name;
            }
        }
        return best;
    }

    private static String withoutUnit(String name) {
        int last = name.lastIndexOf('_');
        return last < 0 ? name : name.substring(0, last);
    }

    private static int edits(String a, String b) {
        int[] previous = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            previous[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(replaced, Math.min(previous[j], row[j - 1]) + 1);
            }
            previous = row;
        }
        return previous[b.length()];
    }
}
