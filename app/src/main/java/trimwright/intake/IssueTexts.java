package trimwright.intake;

import java.util.Locale;
import trimwright.ingest.IngestNote;
import trimwright.ingest.IssueKind;
import trimwright.text.Texts;

/** Findings and notes of the readers as words. */
public final class IssueTexts {
    private IssueTexts() {}

    /** As JSON and the library write it: {@code bad_checksum}. */
    public static String key(Enum<?> kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    /** {@code 3 with a wrong checksum}. */
    public static String count(IssueKind kind, long count) {
        return Texts.of("intake.issue." + key(kind), count);
    }

    /** A sentence. */
    public static String note(IngestNote note) {
        return Texts.of("intake.note." + key(note));
    }
}
