package trimwright.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import trimwright.store.BoatInfo;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.store.SessionsDocument;
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
            console.json(SessionsDocument.of(folder, sessions));
        } else if (sessions.isEmpty()) {
            console.line(Texts.of("sessions.none", folder));
        } else {
            TextTable table = new TextTable(Texts.of("sessions.head"));
            sessions.forEach(session -> table.row(
                    List.of(session.id(), shown(session), duration(session), boats(session), files(session))));
            console.text(table.text());
        }
        return CommandRunner.DONE;
    }

    /** {@code 2026-05-09-fleet: 2 boats, 25 min 3 s from 2026-05-09 14:00:00 UTC+02:00 (Avocet, Curlew)}. */
    static String oneLine(SessionInfo session) {
        return Texts.of(
                "sessions.line",
                session.id(),
                session.boats().size(),
                duration(session),
                shown(session),
                boats(session));
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

    /** Begin in the time of day on board: {@code 2026-05-09 14:00:00 UTC+02:00}. */
    private static String shown(SessionInfo session) {
        String local = session.start().plusSeconds(session.offset().seconds()).toString();
        return local.substring(0, 19).replace('T', ' ') + " " + session.offset().name();
    }
}
