package trimwright.store;

import java.text.Normalizer;
import java.util.Locale;

/** Lower-case ASCII words for ids and folder names. */
public final class Slug {
    private static final int LONGEST = 40;

    private Slug() {}

    /** Letters, digits and single hyphens only; accents are dropped; {@code "x"} if nothing is left. */
    public static String of(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        String cut = plain.length() > LONGEST ? plain.substring(0, LONGEST).replaceAll("-+$", "") : plain;
        return cut.isEmpty() ? "x" : cut;
    }
}
