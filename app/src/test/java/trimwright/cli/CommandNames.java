package trimwright.cli;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import trimwright.Main;

/** The words that may follow {@code trimwright} on a command line. */
public final class CommandNames {
    private CommandNames() {}

    public static Set<String> all() {
        return new TreeSet<>(Main.runner(System.out, System.err, ProgressStyle.NONE, Map.of())
                .commandLine()
                .getSubcommands()
                .keySet());
    }
}
