package trimwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import trimwright.store.Library;
import trimwright.store.Moments;
import trimwright.store.SessionInfo;
import trimwright.text.Texts;

/** Takes a moment out of a session. */
@Command(name = "drop")
public final class MomentDropCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Parameters(index = "0", paramLabel = "SESSION", descriptionKey = "moment.session")
    private String session;

    @Parameters(index = "1", paramLabel = "MOMENT", descriptionKey = "moment.id")
    private String id;

    private final Console console;
    private final Folders folders;

    public MomentDropCommand(Console console, Folders folders) {
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() {
        try (Library shelf = Library.open(library.folder(folders))) {
            SessionInfo info = shelf.getSession(session);
            Moments moments = shelf.moments(info);
            moments.drop(id);
            if (common.json()) {
                console.json(Moments.document(info, moments.list()));
            } else {
                console.line(Texts.of("moment.dropped", id, info.id()));
            }
        }
        return CommandRunner.DONE;
    }
}
