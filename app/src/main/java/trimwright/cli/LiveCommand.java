package trimwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.Antenna;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.call.TalkCard;
import trimwright.course.Course;
import trimwright.coursefile.CourseFiles;
import trimwright.dockside.DockStops;
import trimwright.drills.DrillBoats;
import trimwright.drills.LineBookRun;
import trimwright.ingest.journal.JournalSource.Protocol;
import trimwright.live.LiveBoat;
import trimwright.platform.Platform;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.recording.EventMode;
import trimwright.recording.InputAddress;
import trimwright.recording.Journals;
import trimwright.recording.LiveBoard;
import trimwright.recording.LiveCalls;
import trimwright.recording.LiveMarks;
import trimwright.recording.LiveStart;
import trimwright.recording.Recording;
import trimwright.recording.Replay;
import trimwright.recording.SteadyClock;
import trimwright.recording.TalkCards;
import trimwright.response.SpeedResponse;
import trimwright.segment.FoilingRule;
import trimwright.start.LineBook;
import trimwright.store.Library;
import trimwright.store.StoredSession;
import trimwright.target.TargetBook;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.web.LiveRoutes;
import trimwright.web.Routes;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** Takes streams, keeps every byte and shows them, or replays a session, until it is interrupted. */
@Command(name = "live")
public final class LiveCommand implements Callable<Integer> {
    /** Chosen: beside the workbench's. */
    private static final String PORT = "8747";

    private static final double SLOWEST = 1;
    private static final double FASTEST = 100;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Option(names = "--nmea", paramLabel = "[BOAT=]ADDRESS", descriptionKey = "trimwright.live.nmea")
    private List<String> nmea = new ArrayList<>();

    @Option(names = "--signalk", paramLabel = "[BOAT=]ADDRESS", descriptionKey = "trimwright.live.signalk")
    private List<String> signalk = new ArrayList<>();

    @Option(
            names = "--boat-name",
            paramLabel = "NAME",
            defaultValue = "boat",
            descriptionKey = "trimwright.live.boat_name")
    private String boatName = "boat";

    @Option(names = "--event", paramLabel = "MODE", defaultValue = "practice", descriptionKey = "trimwright.live.event")
    private String event = "practice";

    @Option(names = "--boat", paramLabel = "BOAT", descriptionKey = "trimwright.live.boat")
    private @Nullable String boat;

    @Mixin
    private final WingOption wing = new WingOption();

    @Mixin
    private final SetupOption setup = new SetupOption();

    @Option(names = "--own", paramLabel = "NAME", defaultValue = "", descriptionKey = "trimwright.live.own")
    private String own = "";

    @Option(names = "--replay", paramLabel = "SESSION", descriptionKey = "trimwright.live.replay")
    private @Nullable String replay;

    @Option(names = "--rate", paramLabel = "N", defaultValue = "1", descriptionKey = "trimwright.live.rate")
    private double rate = 1;

    @Option(names = "--talk-card", paramLabel = "FILE", descriptionKey = "trimwright.live.talk_card")
    private @Nullable Path talkCard;

    @Option(names = "--calls", descriptionKey = "trimwright.live.calls")
    private boolean calls;

    @Option(names = "--gun", paramLabel = "UTC", descriptionKey = "trimwright.live.gun")
    private @Nullable String gun;

    @Option(names = "--course", paramLabel = "FILE", descriptionKey = "trimwright.live.course")
    private @Nullable Path course;

    @Option(names = "--port", paramLabel = "N", defaultValue = PORT, descriptionKey = "trimwright.live.port")
    private int port;

    @Option(names = "--open", descriptionKey = "trimwright.live.open")
    private boolean open;

    private final Console console;
    private final Folders folders;
    private final TargetBooks books;

    public LiveCommand(Console console, Folders folders, TargetBooks books) {
        this.console = console;
        this.folders = folders;
        this.books = books;
    }

    @Override
    public Integer call() throws InterruptedException {
        EventMode mode = EventMode.find(event);
        if (mode == null) {
            throw new UserInputException(Texts.of("live.no_event", event));
        }
        if (replay != null && !(rate >= SLOWEST && rate <= FASTEST)) {
            throw new UserInputException(Texts.of("live.bad_rate", rate));
        }
        List<InputAddress> addresses = new ArrayList<>();
        nmea.forEach(text -> addresses.add(InputAddress.of(Protocol.NMEA0183, text, boatName)));
        signalk.forEach(text -> addresses.add(InputAddress.of(Protocol.SIGNALK, text, boatName)));
        if (addresses.isEmpty() == (replay == null)) {
            throw new UserInputException(Texts.of(replay == null ? "live.no_input" : "live.two_inputs"));
        }
        Path folder = library.folder(folders);
        TalkCard card = talkCard == null ? TalkCards.usual() : TalkCards.read(talkCard);
        Course sailed = course == null ? null : CourseFiles.read(course);
        long starts = gun == null && sailed != null ? sailed.gunNanos() : gunNanos();
        LiveCalls.Allowed allowed = mode == EventMode.PRACTICE || calls ? LiveCalls.Allowed.YES : LiveCalls.Allowed.NO;
        LiveCalls caller = boat == null ? null : caller(BoatFiles.find(boat), card, allowed, starts);
        LiveStart start = sailed == null ? null : start(sailed, starts, card, allowed);
        LiveBoard board = new LiveBoard(
                boats(), own.isEmpty() ? firstBoat(addresses) : own, mode, replay == null ? 0 : rate, caller, start);
        if (replay == null) {
            record(addresses, mode, board, folder);
        } else {
            replay(replay, board, folder);
        }
        return CommandRunner.DONE;
    }

    /** Calls need a boat file; in a race they need the event's leave, too. */
    private LiveCalls caller(BoatFile file, TalkCard card, LiveCalls.Allowed allowed, long starts) {
        LiveMarks marks = new LiveMarks(file.marks(), wing.of(file.boat()).id());
        return new LiveCalls(file.boat().limits(), card, allowed, starts, marks);
    }

    private long gunNanos() {
        if (gun == null) {
            return Long.MIN_VALUE;
        }
        try {
            return Instant.parse(gun).toEpochMilli() * 1_000_000;
        } catch (DateTimeParseException e) {
            throw new UserInputException(Texts.of("live.bad_gun", gun), e);
        }
    }

    /** Seconds to the line are computed beside the recording: until they are there, time and distance are shown alone. */
    private LiveStart start(Course sailed, long starts, TalkCard card, LiveCalls.Allowed allowed)
            throws InterruptedException {
        AtomicReference<@Nullable LineBook> made = new AtomicReference<>();
        Antenna antenna = new Antenna(0, 0);
        if (boat != null) {
            BoatFile file = BoatFiles.find(boat);
            WingSpec carried = wing.of(file.boat());
            TargetBook book = console.book(books, TargetRequest.of(file, carried));
            antenna = file.boat().antenna();
            Thread work = new Thread(
                    () -> {
                        try {
                            made.set(LineBookRun.of(file, carried, book));
                        } catch (InterruptedException e) {
                            Thread.currentThread().interrupt();
                        }
                    },
                    "start");
            work.setDaemon(true);
            work.start();
        }
        return new LiveStart(sailed, starts, antenna, made::get, card, allowed);
    }

    private static String firstBoat(List<InputAddress> addresses) {
        return addresses.isEmpty() ? "" : addresses.get(0).boat();
    }

    private void record(List<InputAddress> addresses, EventMode mode, LiveBoard board, Path folder)
            throws InterruptedException {
        Journals journals = new Journals(folder, course);
        journals.begin();
        journals.closeLeftovers().forEach(closed -> say(closed, "live.recovered"));
        warn(board, folder, own.isEmpty() ? firstBoat(addresses) : own, Instant.now());
        AtomicReference<@Nullable Recording> running = new AtomicReference<>();
        LiveRoutes live = new LiveRoutes(
                board,
                () -> {
                    Recording run = running.get();
                    return run == null ? null : run.cut();
                },
                against());
        try (Library shelf = Library.open(folder);
                Workbench pages = Workbench.start(withDebrief(live, shelf), port)) {
            Recording run = Recording.begin(journals, addresses, SteadyClock.ofSystem(), mode, board);
            running.set(run);
            board.watch(run.recorder());
            // The signal of Ctrl-C ends the process by way of this; so does the end of a terminal.
            Runtime.getRuntime().addShutdownHook(new Thread(() -> close(run), "closing"));
            announce(run.ports(), addresses, folder, pages.address());
            new CountDownLatch(1).await();
        }
    }

    private LiveRoutes.@Nullable Against against() {
        return boat == null
                ? null
                : new LiveRoutes.Against(
                        boatFile(), boat, wing.of(BoatFiles.find(boat).boat()).id());
    }

    private @Nullable Path boatFile() {
        Path given = boat == null ? null : Path.of(boat);
        return given == null || !Files.isReadable(given) ? null : given;
    }

    /** The pages of the workbench too: between races the day's sessions are looked at where the boat is watched. */
    private List<Routes> withDebrief(Routes live, Library shelf) {
        Path given = boatFile();
        List<Routes> all = new ArrayList<>(Services.of(shelf, given == null ? List.of() : List.of(given), books));
        all.add(live);
        return all;
    }

    private void replay(String session, LiveBoard board, Path folder) throws InterruptedException {
        try (Workbench pages = Workbench.start(List.of(new LiveRoutes(board)), port);
                StoredSession stored = StoredSession.open(folder, session)) {
            String shown = own.isEmpty() ? stored.info().boats().get(0).boat() : own;
            warn(board, folder, shown, stored.info().start());
            try (Replay running = Replay.begin(stored, rate, board)) {
                announce(List.of(), List.of(), folder, pages.address());
                running.await();
            }
        }
    }

    /** What a dock check of the day before the data found stays in sight. */
    private static void warn(LiveBoard board, Path folder, String boat, Instant now) {
        try (Library shelf = Library.open(folder)) {
            board.warn(DockStops.of(shelf, boat, now));
        }
    }

    /** Makes the derivation of a boat, with targets where a boat file is given. */
    private Supplier<LiveBoat> boats() throws InterruptedException {
        if (boat == null) {
            setup.withoutBoat();
            return () -> new LiveBoat(null, null, null);
        }
        BoatFile file = setup.of(BoatFiles.find(boat));
        WingSpec carried = wing.of(file.boat());
        TargetBook book = console.book(books, TargetRequest.of(file, carried));
        SpeedResponse response = DrillBoats.response(file, carried, book);
        if (response == null) {
            console.note(Texts.of("live.no_response", file.boat().title()));
        }
        Platform platform = TargetRun.platformOf(file.boat(), carried);
        return () ->
                new LiveBoat(file.boat(), book, FoilingRule.BySpeed.above(book.slowestFoiling()), response, platform);
    }

    private void close(Recording run) {
        console.note(Texts.of("live.closing"));
        say(run.close(), "live.closed");
    }

    private void announce(List<Integer> ports, List<InputAddress> addresses, Path folder, String pages) {
        if (common.json()) {
            ObjectNode document = JsonOut.document("live-start/1").put("library", folder.toString());
            document.put("event", event).put("address", pages + "live").put("coach_address", pages + "coach");
            document.put("session", replay);
            ArrayNode inputs = document.putArray("inputs");
            for (int i = 0; i < addresses.size(); i++) {
                inputs.addObject()
                        .put("address", addresses.get(i).text())
                        .put("boat", addresses.get(i).boat())
                        .put("port", ports.get(i));
            }
            console.json(document);
        } else {
            for (int i = 0; i < addresses.size(); i++) {
                InputAddress address = addresses.get(i);
                String key = ports.get(i) == 0 ? "live.connecting" : "live.listening";
                console.line(Texts.of(key, address.boat(), address.text(), ports.get(i)));
            }
            console.line(Texts.of("live.pages", pages + "live", pages + "coach"));
            console.note(replay == null ? Texts.of("live.stop", folder) : Texts.of("live.replaying", replay, rate));
        }
        if (open) {
            WebBrowser.show(pages + "live");
        }
    }

    private void say(Journals.@Nullable Closed closed, String key) {
        if (closed == null) {
            return;
        }
        if (closed.session() != null) {
            console.note(Texts.of(key, SessionsCommand.oneLine(closed.session())));
        } else {
            console.note(Texts.of("live.not_closed", closed.journal(), String.valueOf(closed.fault())));
        }
    }
}
