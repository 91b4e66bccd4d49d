package trimwright.cli;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trimwright.boat.Boat;
import trimwright.boatfile.BoatFiles;
import trimwright.debrief.KeptDebriefs;
import trimwright.debrief.SessionCourse;
import trimwright.report.MomentPage;
import trimwright.store.Library;
import trimwright.store.Moment;
import trimwright.store.Moments;
import trimwright.store.SessionInfo;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Writes a moment as one HTML file that needs nothing else. */
@Command(name = "export")
public final class MomentExportCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Mixin
    private final ReportOption report = new ReportOption();

    @Parameters(index = "0", paramLabel = "SESSION", descriptionKey = "moment.session")
    private String session;

    @Parameters(index = "1", paramLabel = "MOMENT", descriptionKey = "moment.id")
    private String id;

    @Option(names = "--boat", paramLabel = "BOAT", descriptionKey = "moment.boat")
    private @Nullable String boat;

    private final Console console;
    private final Folders folders;

    public MomentExportCommand(Console console, Folders folders) {
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() {
        if (!report.isAsked()) {
            throw new UserInputException(Texts.of("moment.where"));
        }
        try (Library shelf = Library.open(library.folder(folders))) {
            SessionInfo info = shelf.getSession(session);
            Moment moment = shelf.moments(info).get(id);
            MomentPage page =
                    MomentPage.of(moment, info, shelf.load(info), SessionCourse.find(shelf, info), boat(shelf, info));
            String told = report.write(page.html());
            if (common.json()) {
                console.json(Moments.document(info, List.of(moment)));
            } else {
                console.line(told);
            }
        }
        return CommandRunner.DONE;
    }

    /** The one given, else that which the session was judged by last; null where there is neither. */
    private @Nullable Boat boat(Library shelf, SessionInfo info) {
        if (boat != null) {
            return BoatFiles.find(boat).boat();
        }
        List<KeptDebriefs.Judge> judges = new KeptDebriefs(shelf.derived(info)).judges();
        return judges.isEmpty()
                ? null
                : BoatFiles.parse(info.id(), judges.get(0).boat().getBytes(StandardCharsets.UTF_8))
                        .boat();
    }
}
