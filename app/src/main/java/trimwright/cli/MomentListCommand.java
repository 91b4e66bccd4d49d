package trimwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trimwright.store.Library;
import trimwright.store.Moment;
import trimwright.store.Moments;
import trimwright.store.SessionInfo;
import trimwright.text.TextTable;
import trimwright.text.Texts;

/** Lists what was marked in a session. */
@Command(name = "list")
public final class MomentListCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Parameters(paramLabel = "SESSION", descriptionKey = "moment.session")
    private String session;

    @Option(names = "--tag", paramLabel = "TAG", descriptionKey = "moment.tag_asked")
    private List<String> tags = List.of();

    private final Console console;
    private final Folders folders;

    public MomentListCommand(Console console, Folders folders) {
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() {
        SessionInfo info;
        List<Moment> moments;
        try (Library shelf = Library.open(library.folder(folders))) {
            info = shelf.getSession(session);
            moments = shelf.moments(info).list().stream()
                    .filter(moment -> moment.hasTags(tags))
                    .toList();
        }
        if (common.json()) {
            console.json(Moments.document(info, moments));
        } else if (moments.isEmpty()) {
            console.line(Texts.of("moment.none", info.id()));
        } else {
            TextTable table = new TextTable(Texts.of("moment.head"));
            moments.forEach(moment -> table.row(List.of(
                    moment.id(),
                    MomentTime.shown(info, moment.start()),
                    Long.toString(Math.round(moment.duration())),
                    moment.boat() == null ? "-" : moment.boat(),
                    moment.note(),
                    moment.tags().isEmpty() ? "-" : String.join(", ", moment.tags()))));
            console.text(table.text());
        }
        return CommandRunner.DONE;
    }
}
