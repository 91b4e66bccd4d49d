package trimwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import trimwright.store.BoatInfo;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;
import trimwright.text.TextTable;
import trimwright.text.Texts;

/** Lists the sessions of a library. */
@Command(name = "sessions")
public final class SessionsCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    private final Console console;
    private final Folders folders;

    public SessionsCommand(Console console, Folders folders) {
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() {
        Path folder = library.folder(folders);
        List<SessionInfo> sessions;
        try (Library shelf = Library.open(folder)) {
            sessions = shelf.sessions();
        }
        if (common.json()) {
            ObjectNode document = JsonOut.document("sessions/1");
            document.put("library", folder.toString());
            ArrayNode array = document.putArray("sessions");
            sessions.forEach(session -> write(session, array.addObject()));
            console.json(document);
        } else if (sessions.isEmpty()) {
            console.line(Texts.of("sessions.none", folder));
        } else {
            TextTable table = new TextTable(Texts.of("sessions.head"));
            sessions.forEach(session -> table.row(
                    List.of(session.id(), shown(session.start()), duration(session), boats(session), files(session))));
            console.text(table.text());
        }
        return CommandRunner.DONE;
    }

    /** {@code 2026-05-09-fleet: 2 boats, 25 min 3 s from 2026-05-09 12:00:00 UTC (Avocet, Curlew)}. */
    static String oneLine(SessionInfo session) {
        return Texts.of(
                "sessions.line",
                session.id(),
                session.boats().size(),
                duration(session),
                shown(session.start()),
                boats(session));
    }

    static void write(SessionInfo session, ObjectNode node) {
        node.put("session", session.id());
        node.put("start_utc", session.start().toString());
        node.put("end_utc", session.end().toString());
        node.put("duration_s", Duration.between(session.start(), session.end()).toNanos() / 1e9);
        ArrayNode boats = node.putArray("boats");
        for (BoatInfo boat : session.boats()) {
            ObjectNode entry = boats.addObject().put("boat", boat.boat());
            ArrayNode channels = entry.putArray("channels");
            boat.paths().forEach(channels::add);
        }
        ArrayNode files = node.putArray("files");
        session.sources().forEach(source -> files.add(source.name()));
    }

    private static String boats(SessionInfo session) {
        return session.boats().stream().map(BoatInfo::boat).collect(Collectors.joining(", "));
    }

    private static String files(SessionInfo session) {
        return Integer.toString(session.sources().size());
    }

    private static String duration(SessionInfo session) {
        Duration span = Duration.between(session.start(), session.end());
        return span.toHours() > 0
                ? String.format(Locale.ROOT, "%d h %02d min", span.toHours(), span.toMinutesPart())
                : String.format(Locale.ROOT, "%d min %02d s", span.toMinutes(), span.toSecondsPart());
    }

    private static String shown(Instant instant) {
        return instant.toString().substring(0, 19).replace('T', ' ') + " UTC";
    }
}
