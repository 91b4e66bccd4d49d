package trimwright.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trimwright.ingest.IngestReport;
import trimwright.ingest.Issue;
import trimwright.ingest.nmea.ChecksumRule;
import trimwright.intake.Intake;
import trimwright.intake.IntakeOptions;
import trimwright.intake.IntakeReport;
import trimwright.intake.IssueTexts;
import trimwright.intake.MappingFile;
import trimwright.store.SessionInfo;
import trimwright.store.SessionsDocument;
import trimwright.text.JsonOut;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Reads logs into the library. */
@Command(name = "import")
public final class ImportCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Parameters(paramLabel = "FILE", arity = "1..*", descriptionKey = "import.file")
    private List<Path> files = List.of();

    @Option(names = "--boat-name", paramLabel = "NAME", descriptionKey = "import.boat_name")
    private @Nullable String boatName;

    @Option(names = "--map", paramLabel = "MAP", descriptionKey = "import.map")
    private @Nullable Path map;

    @Option(names = "--course", paramLabel = "COURSE", descriptionKey = "import.course")
    private @Nullable Path course;

    @Option(names = "--start", paramLabel = "UTC", descriptionKey = "import.start")
    private @Nullable String start;

    @Option(names = "--session", paramLabel = "SESSION", descriptionKey = "import.session")
    private @Nullable String session;

    @Option(names = "--name", paramLabel = "WORD", descriptionKey = "import.name")
    private @Nullable String name;

    @Option(names = "--accept-unchecked", descriptionKey = "import.accept_unchecked")
    private boolean acceptUnchecked;

    private final Console console;
    private final Folders folders;

    public ImportCommand(Console console, Folders folders) {
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() {
        if (boatName != null && boatName.isBlank()) {
            throw new UserInputException(Texts.of("import.no_name"));
        }
        MappingFile mapping = map == null ? null : MappingFile.read(map);
        IntakeOptions options = new IntakeOptions(
                boatName,
                mapping,
                startTime(),
                session,
                name,
                course,
                acceptUnchecked ? ChecksumRule.OPTIONAL : ChecksumRule.REQUIRED);
        Path folder = library.folder(folders);
        IntakeReport report;
        try (Progress progress = console.progress(Texts.of("import.task"), Intake.length(files), "B")) {
            report = new Intake(folder, options).run(files, progress);
        }
        report.files().forEach(this::noteFile);
        if (common.json()) {
            console.json(document(folder, report));
        } else {
            for (IntakeReport.FileReport file : report.files()) {
                if (file.outcome() == IntakeReport.Outcome.ALREADY_THERE) {
                    console.line(Texts.of("import.already_there", file.name(), file.session()));
                }
            }
            report.sessions().forEach(added -> console.line(SessionsCommand.oneLine(added)));
        }
        return CommandRunner.DONE;
    }

    private @Nullable Instant startTime() {
        if (start == null) {
            return null;
        }
        try {
            return start.matches(".*([zZ]|[+-]\\d\\d:?\\d\\d)$")
                    ? OffsetDateTime.parse(start).toInstant()
                    : LocalDateTime.parse(start.length() == 10 ? start + "T00:00:00" : start)
                            .toInstant(ZoneOffset.UTC);
        } catch (DateTimeException e) {
            throw new UserInputException(Texts.of("import.bad_start", start), e);
        }
    }

    private void noteFile(IntakeReport.FileReport file) {
        IngestReport read = file.report();
        if (read == null) {
            return;
        }
        console.note(Texts.of("import.read", file.name(), read.lines(), read.usable()));
        read.issues().counts().forEach((kind, count) -> {
            Issue first = read.issues().first().stream()
                    .filter(issue -> issue.kind() == kind)
                    .findFirst()
                    .orElse(null);
            String text = IssueTexts.count(kind, count);
            console.note("  " + (first == null ? text : Texts.of("import.first", text, first.line())));
        });
        read.notes().forEach(note -> console.note("  " + IssueTexts.note(note)));
    }

    private static ObjectNode document(Path folder, IntakeReport report) {
        ObjectNode document = JsonOut.document("import/1");
        document.put("library", folder.toString());
        ArrayNode files = document.putArray("files");
        for (IntakeReport.FileReport file : report.files()) {
            ObjectNode node = files.addObject();
            node.put("file", file.name());
            node.put("sha256", file.sha256());
            node.put("outcome", IssueTexts.key(file.outcome()));
            node.put("session", file.session());
            IngestReport read = file.report();
            if (read != null) {
                node.put("kind", file.kind());
                ArrayNode boats = node.putArray("boats");
                file.boats().forEach(boats::add);
                writeReport(read, node);
            }
        }
        ArrayNode sessions = document.putArray("sessions");
        for (SessionInfo added : report.sessions()) {
            SessionsDocument.write(added, sessions.addObject());
        }
        return document;
    }

    private static void writeReport(IngestReport read, ObjectNode node) {
        node.put("lines", read.lines());
        node.put("usable", read.usable());
        ObjectNode counts = node.putObject("issues");
        read.issues().counts().forEach((kind, count) -> counts.put(IssueTexts.key(kind), count));
        ArrayNode first = node.putArray("first_issues");
        for (Issue issue : read.issues().first()) {
            first.addObject()
                    .put("line", issue.line())
                    .put("kind", IssueTexts.key(issue.kind()))
                    .put("detail", issue.detail());
        }
        ArrayNode notes = node.putArray("notes");
        read.notes().forEach(note -> notes.add(IssueTexts.key(note)));
    }
}
