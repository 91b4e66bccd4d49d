package trimwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.prepare.SectionSource;
import trimwright.prepare.SectionTables;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetBooks;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Where a command takes the flow about the wing's sections from. */
public final class SectionOption {
    @Option(names = "--section", paramLabel = "MODEL", defaultValue = "closed-form", descriptionKey = "common.section")
    private String section = "";

    SectionSource source() {
        for (SectionSource source : SectionSource.values()) {
            if (source.key().replace('_', '-').equals(section)) {
                return source;
            }
        }
        throw new UserInputException(Texts.of("sections.which", section));
    }

    /** Says in a document where the sections come from. */
    ObjectNode mark(ObjectNode document) {
        return document.put("section", source().key());
    }

    /** Says it in a line where it is not the usual. */
    void say(Console console) {
        if (source() == SectionSource.COMPUTED) {
            console.line(Texts.of("sections.computed"));
        }
    }

    /** The same, of the tables that the books take their sections from. */
    Sections sections(WingSpec wing, TargetBooks books, Console console) throws InterruptedException {
        if (source() == SectionSource.CLOSED_FORM) {
            return Sections.closedForm(wing);
        }
        try (Progress progress = progress(wing, console)) {
            return books.sectionsOf(wing, source(), progress);
        }
    }

    private static Progress progress(WingSpec wing, Console console) {
        return console.progress(
                Texts.of("sections.progress"), SectionTables.steps(wing), Texts.of("sections.progress_unit"));
    }

    /** The sections; tables that are not kept are computed now, with progress. */
    Sections sections(WingSpec wing, SectionTables tables, Console console) throws InterruptedException {
        if (source() == SectionSource.CLOSED_FORM) {
            return Sections.closedForm(wing);
        }
        try (Progress progress = progress(wing, console)) {
            return tables.of(wing, progress);
        }
    }
}
