package trimwright.cli;

import picocli.CommandLine.Option;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;

/** Which boat a command computes. */
public final class BoatOption {
    @Option(names = "--boat", paramLabel = "BOAT", required = true, descriptionKey = "common.boat")
    private String boat;

    /** The boat file named; throws {@link trimwright.text.UserInputException} with every fault that it has. */
    public BoatFile load() {
        return BoatFiles.find(boat);
    }
}
