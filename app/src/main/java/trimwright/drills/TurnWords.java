package trimwright.drills;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import trimwright.crew.TurnKind;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.turn.TurnBegin;

/** Kinds of turns as people write them. */
public final class TurnWords {
    private TurnWords() {}

    static String of(TurnKind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String of(TurnBegin begin) {
        return begin.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** @throws UserInputException where no beginning has that word; it names those there are */
    public static TurnBegin begin(String word) {
        return Arrays.stream(TurnBegin.values())
                .filter(begin -> of(begin).equals(word))
                .findFirst()
                .orElseThrow(() -> new UserInputException(Texts.of(
                        "turnplan.no_begin",
                        word,
                        Arrays.stream(TurnBegin.values()).map(TurnWords::of).collect(Collectors.joining(", ")))));
    }

    /** @throws UserInputException where no kind has that word; it names those there are */
    public static TurnKind kind(String word) {
        return Arrays.stream(TurnKind.values())
                .filter(kind -> of(kind).equals(word))
                .findFirst()
                .orElseThrow(() -> new UserInputException(Texts.of(
                        "turnplan.no_kind",
                        word,
                        Arrays.stream(TurnKind.values()).map(TurnWords::of).collect(Collectors.joining(", ")))));
    }
}
