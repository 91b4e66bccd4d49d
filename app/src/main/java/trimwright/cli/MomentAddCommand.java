package trimwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trimwright.store.Library;
import trimwright.store.Moment;
import trimwright.store.Moments;
import trimwright.store.SessionInfo;
import trimwright.text.Texts;

/** Marks a moment of a session. */
@Command(name = "add")
public final class MomentAddCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Parameters(paramLabel = "SESSION", descriptionKey = "moment.session")
    private String session;

    @Option(names = "--at", paramLabel = "TIME", required = true, descriptionKey = "moment.at")
    private String at;

    @Option(names = "--seconds", paramLabel = "N", defaultValue = "20", descriptionKey = "moment.seconds")
    private double seconds;

    @Option(names = "--note", paramLabel = "TEXT", required = true, descriptionKey = "moment.note_option")
    private String note;

    @Option(names = "--of", paramLabel = "NAME", descriptionKey = "moment.of")
    private @Nullable String of;

    @Option(names = "--tag", paramLabel = "TAG", descriptionKey = "moment.tag")
    private List<String> tags = List.of();

    private final Console console;
    private final Folders folders;

    public MomentAddCommand(Console console, Folders folders) {
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() {
        try (Library shelf = Library.open(library.folder(folders))) {
            SessionInfo info = shelf.getSession(session);
            Moments moments = shelf.moments(info);
            Moment kept = moments.keep(MomentTime.seconds(info, at), seconds, of, note, tags);
            if (common.json()) {
                console.json(Moments.document(info, List.of(kept)));
            } else {
                console.line(Texts.of("moment.kept", kept.id(), MomentTime.shown(info, kept.start()), info.id()));
            }
        }
        return CommandRunner.DONE;
    }
}
