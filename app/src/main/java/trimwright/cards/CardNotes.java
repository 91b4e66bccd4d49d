package trimwright.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Notes of one side, each said once and named by a letter; built row by row. */
final class CardNotes {
    private final List<String> notes = new ArrayList<>();

    /** The letters of these notes, in the order of the alphabet; new ones are added. */
    String marks(List<String> said) {
        for (String note : said) {
            if (!notes.contains(note)) {
                notes.add(note);
            }
        }
        return said.stream()
                .map(notes::indexOf)
                .distinct()
                .sorted()
                .map(CardNotes::letter)
                .collect(Collectors.joining());
    }

    /** All notes, each begun by its letter. */
    List<String> lettered() {
        List<String> lettered = new ArrayList<>();
        for (int i = 0; i < notes.size(); i++) {
            lettered.add(letter(i) + "  " + notes.get(i));
        }
        return lettered;
    }

    private static String letter(int index) {
        return String.valueOf((char) ('a' + index));
    }
}
