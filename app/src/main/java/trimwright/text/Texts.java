package trimwright.text;

import java.util.Collections;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.SortedMap;
import java.util.TreeMap;

/** Every sentence that people are shown, in one bundle: {@code trimwright/text/messages.properties}. */
public final class Texts {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("trimwright.text.messages", Locale.ROOT);

    private Texts() {}

    /**
     * The text of a key. With arguments the text is a {@link java.util.Formatter} pattern ({@code %s}, {@code %.1f}),
     * formatted the same in every locale; without arguments it is taken as it stands.
     *
     * @throws java.util.MissingResourceException if the bundle has no such key
     */
    public static String of(String key, Object... args) {
        String pattern = BUNDLE.getString(key);
        return args.length == 0 ? pattern : String.format(Locale.ROOT, pattern, args);
    }

    public static boolean contains(String key) {
        return BUNDLE.containsKey(key);
    }

    /** All texts whose key starts with the prefix, for example {@code page.}, by whole key. */
    public static SortedMap<String, String> startingWith(String prefix) {
        SortedMap<String, String> found = new TreeMap<>();
        for (String key : Collections.list(BUNDLE.getKeys())) {
            if (key.startsWith(prefix)) {
                found.put(key, BUNDLE.getString(key));
            }
        }
        return found;
    }

    /** The bundle itself, for picocli's usage texts. */
    public static ResourceBundle bundle() {
        return BUNDLE;
    }
}
