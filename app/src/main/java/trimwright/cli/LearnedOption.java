package trimwright.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.season.KeptLearned;
import trimwright.season.Learned;

/** Whether a command takes targets as the library has learnt them. */
public final class LearnedOption {
    @Option(names = "--learned", descriptionKey = "common.learned")
    private boolean wanted;

    /** What was learnt of that boat and wing; null where the model's targets are wanted. */
    @Nullable
    Learned of(BoatFile file, WingSpec wing, LibraryOption library, Folders folders) {
        return wanted ? new KeptLearned(library.folder(folders)).get(file, wing) : null;
    }

    boolean isWanted() {
        return wanted;
    }
}
