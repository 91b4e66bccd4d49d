package trimwright.cli;

import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.prepare.SectionSource;
import trimwright.prepare.SectionTables;
import trimwright.prepare.Sections;
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

    /** The sections; tables that are not kept are computed now, with progress. */
    Sections sections(WingSpec wing, SectionTables tables, Console console) throws InterruptedException {
        if (source() == SectionSource.CLOSED_FORM) {
            return Sections.closedForm(wing);
        }
        try (Progress progress = console.progress(
                Texts.of("sections.progress"), SectionTables.steps(wing), Texts.of("sections.progress_unit"))) {
            return tables.of(wing, progress);
        }
    }
}
