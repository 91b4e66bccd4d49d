package trimwright.cli;

import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.dock.DockAnswer;
import trimwright.dockside.DockDocument;
import trimwright.dockside.DockRequest;
import trimwright.dockside.DockText;
import trimwright.recording.Journals;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;

/** Holds what instruments said at the dock against what is known there. */
@Command(name = "dock-check")
public final class DockCheckCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Parameters(paramLabel = "SESSION", arity = "0..1", descriptionKey = "dock.session")
    private @Nullable String session;

    @Option(names = "--boat", paramLabel = "BOAT", descriptionKey = "common.boat")
    private @Nullable String boat;

    @Mixin
    private final WingOption wing = new WingOption();

    @Option(names = "--own", paramLabel = "NAME", descriptionKey = "dock.own")
    private @Nullable String own;

    @Option(names = "--start", paramLabel = "UTC", descriptionKey = "dock.start")
    private @Nullable String start;

    @Mixin
    private final DockGivenOption given = new DockGivenOption();

    @Option(names = "--live", descriptionKey = "dock.live")
    private boolean live;

    @Option(names = "--list", descriptionKey = "dock.list_option")
    private boolean list;

    private final Console console;
    private final Folders folders;

    public DockCheckCommand(Console console, Folders folders) {
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() {
        if (list) {
            console.text(DockText.list());
            return CommandRunner.DONE;
        }
        if (live == (session != null)) {
            throw new UserInputException(Texts.of("dock.session_or_live"));
        }
        if (boat == null) {
            throw new UserInputException(Texts.of("dock.no_boat_file"));
        }
        BoatFile file = BoatFiles.find(boat);
        Path folder = library.folder(folders);
        if (session == null) {
            DockRequest request = request(file, new Journals(folder).readOpen());
            say(request, request.check());
            return CommandRunner.DONE;
        }
        try (Library shelf = Library.open(folder)) {
            SessionInfo info = shelf.getSession(session);
            DockRequest request = request(file, shelf.load(info));
            DockAnswer.Checked checked = request.check();
            String text = JsonOut.text(DockDocument.of(request, checked));
            boolean kept = shelf.dockChecks(info).keep(request.track().boat(), text);
            say(request, checked);
            console.note(Texts.of(kept ? "dock.kept" : "dock.not_kept", info.id()));
        }
        return CommandRunner.DONE;
    }

    private DockRequest request(BoatFile file, List<BoatTrack> tracks) {
        BoatTrack track = DockRequest.choose(tracks, own);
        long begin = track.startNanos();
        if (start != null) {
            try {
                Instant at = Instant.parse(start);
                begin = at.getEpochSecond() * 1_000_000_000L + at.getNano();
            } catch (DateTimeParseException e) {
                throw new UserInputException(Texts.of("dock.bad_start", start), e);
            }
        }
        return new DockRequest(file, wing.of(file.boat()), track, begin, given.given());
    }

    private void say(DockRequest request, DockAnswer.Checked checked) {
        if (common.json()) {
            console.json(DockDocument.of(request, checked));
        } else {
            console.text(DockText.of(request, checked));
        }
    }
}
