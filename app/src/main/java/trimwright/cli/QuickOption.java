package trimwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import trimwright.debrief.CrewLine;
import trimwright.debrief.CrewLines;
import trimwright.debrief.QuickDocument;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Six lines of one boat in place of the whole debrief, and what her crew says that it will change. */
public final class QuickOption {
    @Option(names = "--quick", descriptionKey = "quick.option")
    private boolean quick;

    @Option(names = "--own", paramLabel = "NAME", descriptionKey = "quick.own")
    private @Nullable String own;

    @Option(names = "--next", paramLabel = "CAUSE", descriptionKey = "quick.next_option")
    private @Nullable String next;

    @Option(names = "--say", paramLabel = "TEXT", descriptionKey = "quick.say")
    private @Nullable String say;

    boolean isAsked() {
        return quick;
    }

    /** Throws where parts are given that mean nothing without another. */
    void check() {
        if (!quick && (own != null || next != null || say != null)) {
            throw new UserInputException(Texts.of("quick.only_quick"));
        }
        if ((next == null) != (say == null || say.isBlank())) {
            throw new UserInputException(Texts.of("quick.both"));
        }
    }

    /** The quick debrief from the whole one; a line that the crew says is kept first. */
    QuickDocument of(String debrief, CrewLines lines) {
        JsonNode document = JsonOut.read(debrief);
        String boat = own == null ? document.path("boats").path(0).path("boat").asText() : own;
        if (next != null && say != null) {
            lines.keep(CrewLine.of(document, boat, next, say));
        }
        return new QuickDocument(document, boat, lines);
    }
}
