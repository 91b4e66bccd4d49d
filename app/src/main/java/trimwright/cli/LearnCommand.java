package trimwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.season.KeptLearned;
import trimwright.season.LearnRun;
import trimwright.season.Learned;
import trimwright.season.LearnedJson;
import trimwright.season.LearnedText;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.text.Texts;

/** Learns a boat's targets from the sessions of a library. */
@Command(name = "learn")
public final class LearnCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Mixin
    private final BoatOption boat = new BoatOption();

    @Mixin
    private final WingOption wing = new WingOption();

    @Mixin
    private final SetupOption setup = new SetupOption();

    @Option(names = "--sessions", paramLabel = "ID", split = ",", descriptionKey = "learn.sessions")
    private final List<String> sessions = new ArrayList<>();

    @Option(names = "--own", paramLabel = "NAME", split = ",", descriptionKey = "learn.own")
    private final List<String> own = new ArrayList<>();

    private final Console console;
    private final Folders folders;
    private final TargetBooks books;

    public LearnCommand(Console console, Folders folders, TargetBooks books) {
        this.console = console;
        this.folders = folders;
        this.books = books;
    }

    @Override
    public Integer call() throws InterruptedException {
        BoatFile file = setup.of(boat.load());
        WingSpec spec = wing.of(file.boat());
        try (Library shelf = Library.open(library.folder(folders))) {
            List<SessionInfo> chosen = sessions.isEmpty()
                    ? shelf.sessions()
                    : sessions.stream().map(shelf::getSession).distinct().toList();
            TargetBook book = console.book(books, TargetRequest.of(file, spec));
            Learned learned;
            try (Progress progress =
                    console.progress(Texts.of("learn.progress"), chosen.size(), Texts.of("learn.progress_unit"))) {
                learned = LearnRun.of(shelf, chosen, file, spec, new TreeSet<>(own), book, progress);
            }
            String place =
                    new KeptLearned(shelf.folder()).keep(learned).getFileName().toString();
            if (common.json()) {
                console.json(LearnedJson.document(learned));
            } else {
                console.line(Texts.of("learn.title", file.boat().title(), file.words(spec)));
                console.text(LearnedText.of(learned, book));
                console.line(Texts.of("learn.kept", place));
                console.line(Texts.of("web.caution.short"));
            }
        }
        return CommandRunner.DONE;
    }
}
