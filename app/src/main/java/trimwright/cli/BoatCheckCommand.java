package trimwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import trimwright.boatfile.BoatFiles;
import trimwright.keyfile.Fault;
import trimwright.text.JsonOut;
import trimwright.text.Texts;

/** Says everything that is wrong in a boat file. */
@Command(name = "check")
public final class BoatCheckCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Parameters(paramLabel = "FILE", descriptionKey = "boat.file")
    private String file;

    private final Console console;

    public BoatCheckCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<Fault> faults = BoatFiles.check(file);
        if (common.json()) {
            console.json(document(faults));
        } else if (faults.isEmpty()) {
            console.line(Texts.of("boat.check.good", file));
        } else {
            faults.forEach(fault -> console.note(fault.text(file)));
        }
        return faults.isEmpty() ? CommandRunner.DONE : CommandRunner.USER_INPUT;
    }

    private ObjectNode document(List<Fault> faults) {
        ObjectNode document = JsonOut.document("boat-check/1").put("file", file);
        ArrayNode list = document.putArray("faults");
        for (Fault fault : faults) {
            list.addObject().put("line", fault.line()).put("key", fault.key()).put("message", fault.message());
        }
        return document;
    }
}
