package trimwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.cli.CommandRunner;
import trimwright.cli.Console;
import trimwright.cli.DebriefCommand;
import trimwright.cli.Folders;
import trimwright.cli.ProgressStyle;
import trimwright.cli.TargetsCommand;
import trimwright.cli.WingCommand;
import trimwright.prepare.SectionTables;
import trimwright.prepare.TargetBooks;

/** Commands run in process, with the books that the workbench has made already. */
final class Command {
    private Command() {}

    /** The JSON document that the command prints. */
    static JsonNode json(TargetBooks books, String... arguments) {
        JsonNode answer = answer(books, arguments);
        assertNotNull(answer, String.join(" ", arguments));
        return answer;
    }

    /** The JSON document that the command prints, or null where physics has no answer. */
    static @Nullable JsonNode answer(TargetBooks books, String... arguments) {
        return answer(books, new SectionTables(), arguments);
    }

    /** The same, with tables of computed sections that may be made already. */
    static @Nullable JsonNode answer(TargetBooks books, SectionTables tables, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                ProgressStyle.NONE);
        Folders folders = Folders.from(Map.of(), Path.of("unused"));
        CommandRunner runner = new CommandRunner(
                List.of(
                        new TargetsCommand(console, folders, books, tables),
                        new DebriefCommand(console, folders, books),
                        new WingCommand(console, tables)),
                console);
        int exit = runner.run(arguments);
        if (exit == CommandRunner.NO_ANSWER) {
            return null;
        }
        assertEquals(CommandRunner.DONE, exit, err.toString(StandardCharsets.UTF_8));
        try {
            return new ObjectMapper().readTree(out.toString(StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new AssertionError("no JSON on standard output", e);
        }
    }
}
