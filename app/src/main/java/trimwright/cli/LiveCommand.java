package trimwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.ingest.journal.JournalSource.Protocol;
import trimwright.recording.EventMode;
import trimwright.recording.Follower;
import trimwright.recording.InputAddress;
import trimwright.recording.Journals;
import trimwright.recording.Recording;
import trimwright.recording.SteadyClock;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Takes streams, keeps every byte, until it is interrupted. */
@Command(name = "live")
public final class LiveCommand implements Callable<Integer> {
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

    private final Console console;
    private final Folders folders;

    public LiveCommand(Console console, Folders folders) {
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() throws InterruptedException {
        EventMode mode = EventMode.find(event);
        if (mode == null) {
            throw new UserInputException(Texts.of("live.no_event", event));
        }
        List<InputAddress> addresses = new ArrayList<>();
        nmea.forEach(text -> addresses.add(InputAddress.of(Protocol.NMEA0183, text, boatName)));
        signalk.forEach(text -> addresses.add(InputAddress.of(Protocol.SIGNALK, text, boatName)));
        if (addresses.isEmpty()) {
            throw new UserInputException(Texts.of("live.no_input"));
        }
        Path folder = library.folder(folders);
        Journals journals = new Journals(folder);
        journals.begin();
        journals.closeLeftovers().forEach(closed -> say(closed, "live.recovered"));
        Recording run = Recording.begin(journals, addresses, SteadyClock.ofSystem(), mode, Follower.NONE);
        // The signal of Ctrl-C ends the process by way of this; so does the end of a terminal.
        Runtime.getRuntime().addShutdownHook(new Thread(() -> close(run), "closing"));
        announce(run, addresses, folder);
        new CountDownLatch(1).await();
        return CommandRunner.DONE;
    }

    private void close(Recording run) {
        console.note(Texts.of("live.closing"));
        say(run.close(), "live.closed");
    }

    private void announce(Recording run, List<InputAddress> addresses, Path folder) {
        if (common.json()) {
            ObjectNode document = JsonOut.document("live-start/1").put("library", folder.toString());
            document.put("event", event);
            ArrayNode inputs = document.putArray("inputs");
            for (int i = 0; i < addresses.size(); i++) {
                inputs.addObject()
                        .put("address", addresses.get(i).text())
                        .put("boat", addresses.get(i).boat())
                        .put("port", run.ports().get(i));
            }
            console.json(document);
        } else {
            for (int i = 0; i < addresses.size(); i++) {
                InputAddress address = addresses.get(i);
                int port = run.ports().get(i);
                console.line(Texts.of(
                        port == 0 ? "live.connecting" : "live.listening", address.boat(), address.text(), port));
            }
            console.note(Texts.of("live.stop", folder));
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
