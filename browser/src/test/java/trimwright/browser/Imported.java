package trimwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import trimwright.Main;
import trimwright.cli.ProgressStyle;

/** Fills a library by the import command, as a user would. */
final class Imported {
    private Imported() {}

    static void into(Path library, String... arguments) {
        List<String> line = new ArrayList<>(List.of("import"));
        line.addAll(List.of(arguments));
        line.addAll(List.of("--library", library.toString()));
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(said, true, StandardCharsets.UTF_8);
        int exit = Main.runner(stream, stream, ProgressStyle.NONE, Map.of()).run(line.toArray(String[]::new));
        assertEquals(0, exit, said.toString(StandardCharsets.UTF_8));
    }

    /** A file of the project, as {@code examples/saltmere/dunlin.nmea}. */
    static String project(String path) {
        return Path.of(System.getProperty("trimwright.root", ".."), path).toString();
    }
}
