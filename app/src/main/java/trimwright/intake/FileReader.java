package trimwright.intake;

import java.io.IOException;
import java.nio.charset.Charset;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.IngestReport;
import trimwright.ingest.IngestResult;
import trimwright.ingest.IssueKind;
import trimwright.ingest.LogReader;
import trimwright.ingest.csv.CsvReader;
import trimwright.ingest.journal.JournalReader;
import trimwright.ingest.n2k.N2kReader;
import trimwright.ingest.nmea.NmeaOptions;
import trimwright.ingest.nmea.NmeaReader;
import trimwright.ingest.signalk.DeltaLogReader;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Reads one file: recognises it by its first bytes and hands all of them to the reader of its kind. */
final class FileReader implements SourceBytes.Taker {
    private final SourceBytes source;
    private final IntakeOptions options;
    private @Nullable LogReader reader;
    private String kind = "";
    private @Nullable Transcoder transcoder;

    private FileReader(SourceBytes source, IntakeOptions options) {
        this.source = source;
        this.options = options;
    }

    /**
     * Reads the file.
     *
     * @throws UserInputException in one line, where nothing in it can be used
     */
    static ReadFile read(SourceBytes source, String sha256, IntakeOptions options, Progress progress) {
        FileReader file = new FileReader(source, options);
        source.read(progress, file);
        return file.finish(sha256);
    }

    @Override
    public void take(byte[] bytes, int length) throws IOException {
        if (reader == null) {
            reader = begin(FileKind.of(bytes, length));
        }
        if (transcoder != null) {
            transcoder.take(bytes, length);
        } else {
            reader.accept(bytes, 0, length);
        }
    }

    private LogReader begin(FileKind found) {
        kind = found.word();
        MappingFile map = options.mapping();
        return switch (found) {
            case EMPTY -> throw new UserInputException(Texts.of("intake.empty", source.path()));
            case BINARY -> throw new UserInputException(Texts.of("intake.binary", source.path()));
            case JOURNAL -> new JournalReader(boat(""));
            case NMEA -> new NmeaReader(new NmeaOptions(boat(""), options.startNanos(), options.checksums()));
            case NMEA_2000 -> new N2kReader(boat(""), options.startNanos());
            case SIGNAL_K -> new DeltaLogReader(boat(""), options.startNanos());
            case GPX -> new GpxReader(boat(""));
            case TEXT_OF_16_BITS -> {
                if (map == null || !MappingLoader.isSixteenBit(map.encoding())) {
                    throw new UserInputException(Texts.of("intake.utf16", source.path()));
                }
                yield beginTable(map);
            }
            case TEXT -> {
                if (map == null) {
                    throw new UserInputException(Texts.of("intake.needs_map", source.path()));
                }
                if (MappingLoader.isSixteenBit(map.encoding())) {
                    throw new UserInputException(Texts.of(
                            "intake.not_utf16", source.path(), map.encoding().name()));
                }
                yield beginTable(map);
            }
        };
    }

    private LogReader beginTable(MappingFile map) {
        CsvReader table = new CsvReader(map.mapping(), boat(map.boatFileSuffix()), options.startNanos());
        Charset encoding = map.encoding();
        if (MappingLoader.isSixteenBit(encoding)) {
            transcoder = new Transcoder(encoding, (bytes, length) -> table.accept(bytes, 0, length));
        }
        return table;
    }

    /** The given name, or the file's name without its endings. */
    private String boat(String suffix) {
        if (options.boat() != null) {
            return options.boat();
        }
        String name = source.name();
        String lower = name.toLowerCase(Locale.ROOT);
        if (lower.endsWith(".gz")) {
            name = name.substring(0, name.length() - 3);
        }
        int dot = name.lastIndexOf('.');
        name = dot > 0 ? name.substring(0, dot) : name;
        return !suffix.isEmpty() && name.endsWith(suffix) && name.length() > suffix.length()
                ? name.substring(0, name.length() - suffix.length())
                : name;
    }

    private ReadFile finish(String sha256) {
        if (reader == null) {
            throw new UserInputException(Texts.of("intake.empty", source.path()));
        }
        if (transcoder != null) {
            transcoder.end();
        }
        IngestResult result = reader.finish();
        if (result instanceof IngestResult.Tracks tracks) {
            return new ReadFile(source, sha256, kind, tracks.tracks(), tracks.report());
        }
        if (result instanceof IngestResult.NoColumn missing) {
            String shown = String.join(", ", missing.present());
            String cut = shown.length() > 300 ? shown.substring(0, 300) + "..." : shown;
            throw new UserInputException(Texts.of("intake.no_column", source.path(), missing.wanted(), cut));
        }
        if (result instanceof IngestResult.NoDate) {
            throw new UserInputException(Texts.of("intake.no_date", source.path()));
        }
        throw new UserInputException(Texts.of("intake.nothing", source.path(), because(result.report())));
    }

    private static String because(IngestReport report) {
        StringBuilder text = new StringBuilder(Texts.of("intake.lines", report.lines()));
        for (IssueKind kind : report.issues().counts().keySet()) {
            text.append(", ").append(IssueTexts.count(kind, report.issues().count(kind)));
        }
        return text.toString();
    }
}
