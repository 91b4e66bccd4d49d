package trimwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import trimwright.text.JsonOut;

/** Prints the folders that the program uses. */
@Command(name = "where")
public final class WhereCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    private final Console console;
    private final Folders folders;

    public WhereCommand(Console console, Folders folders) {
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() {
        if (common.json()) {
            ObjectNode document = JsonOut.document("where/1");
            document.put("data", folders.data().toString());
            document.put("config", folders.config().toString());
            document.put("cache", folders.cache().toString());
            console.json(document);
        } else {
            console.line("data    " + folders.data());
            console.line("config  " + folders.config());
            console.line("cache   " + folders.cache());
        }
        return CommandRunner.DONE;
    }
}
