package trimwright.cli;

import picocli.CommandLine.Option;

/** The options that every command has. */
// Picocli acts on three of the fields by their annotations; nothing else reads them.
@SuppressWarnings("UnusedVariable")
public final class CommonOptions {
    @Option(names = "--json", descriptionKey = "common.json")
    private boolean json;

    @Option(names = "--debug", descriptionKey = "common.debug")
    private boolean debug;

    @Option(names = "--help", usageHelp = true, descriptionKey = "common.help")
    private boolean help;

    @Option(names = "--version", versionHelp = true, descriptionKey = "common.version")
    private boolean version;

    /** Whether one JSON document is asked for on standard output, and nothing else there. */
    public boolean json() {
        return json;
    }
}
