package trimwright.recording;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trimwright.call.CallKind;
import trimwright.call.StartWord;
import trimwright.call.TalkCard;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Reads talk cards: a line a call, {@code word = sentence}; what a card does not name is said in the program's own words. */
public final class TalkCards {
    private TalkCards() {}

    /** The program's own words. */
    public static TalkCard usual() {
        return new TalkCard(usualWords(), usualStarts());
    }

    private static Map<StartWord, String> usualStarts() {
        Map<StartWord, String> words = new EnumMap<>(StartWord.class);
        for (StartWord word : StartWord.values()) {
            words.put(word, Texts.of("call.say." + word(word)));
        }
        return words;
    }

    private static Map<CallKind, String> usualWords() {
        Map<CallKind, String> words = new EnumMap<>(CallKind.class);
        for (CallKind kind : CallKind.values()) {
            words.put(kind, Texts.of("call.say." + word(kind)));
        }
        return words;
    }

    /** The card of a file; throws {@link UserInputException} with line and reason. */
    public static TalkCard read(Path file) {
        List<String> lines;
        try {
            lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("call.card_unread", file), e);
        }
        Map<CallKind, String> words = usualWords();
        Map<StartWord, String> starts = usualStarts();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            int equals = line.indexOf('=');
            String name = equals < 0 ? line : line.substring(0, equals).strip();
            CallKind kind = find(name);
            StartWord start = findStart(name);
            if ((kind == null && start == null) || equals < 0) {
                throw new UserInputException(Texts.of(
                        "call.card_unknown",
                        file,
                        i + 1,
                        name,
                        Stream.concat(
                                        Arrays.stream(CallKind.values()).map(TalkCards::word),
                                        Arrays.stream(StartWord.values()).map(TalkCards::word))
                                .collect(Collectors.joining(", "))));
            }
            String sentence = line.substring(equals + 1).strip();
            if (!TalkCard.fits(sentence)) {
                throw new UserInputException(
                        Texts.of("call.card_long", file, i + 1, name, TalkCard.MOST_WORDS, sentence));
            }
            if (kind != null) {
                words.put(kind, sentence);
            } else if (start != null) {
                starts.put(start, sentence);
            }
        }
        return new TalkCard(words, starts);
    }

    private static @Nullable CallKind find(String name) {
        return Arrays.stream(CallKind.values())
                .filter(kind -> word(kind).equals(name))
                .findFirst()
                .orElse(null);
    }

    private static @Nullable StartWord findStart(String name) {
        return Arrays.stream(StartWord.values())
                .filter(word -> word(word).equals(name))
                .findFirst()
                .orElse(null);
    }

    private static String word(StartWord word) {
        return "start_" + word.name().toLowerCase(Locale.ROOT);
    }

    /** As written in files. */
    static String word(CallKind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }
}
