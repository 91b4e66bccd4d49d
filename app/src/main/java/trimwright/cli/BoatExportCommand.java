package trimwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import trimwright.boatfile.BoatFiles;
import trimwright.text.JsonOut;

/** Prints the file of a shipped boat: the start of a file of one's own. */
@Command(name = "export")
public final class BoatExportCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Parameters(paramLabel = "NAME", descriptionKey = "boat.name")
    private String name;

    private final Console console;

    public BoatExportCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        String text = BoatFiles.shippedText(name);
        if (common.json()) {
            console.json(JsonOut.document("boat-export/1").put("boat", name).put("toml", text));
        } else {
            console.text(text);
        }
        return CommandRunner.DONE;
    }
}
