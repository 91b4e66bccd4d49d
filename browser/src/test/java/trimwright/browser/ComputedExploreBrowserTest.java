package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boatfile.BoatFiles;
import trimwright.prepare.SectionSource;
import trimwright.prepare.SectionTables;
import trimwright.prepare.TableCache;
import trimwright.prepare.TargetBooks;
import trimwright.store.Library;
import trimwright.text.Progress;
import trimwright.web.Services;
import trimwright.web.Workbench;

/**
 * Explore with tables of computed sections, against the command with them. By hand, {@code -Dtrimwright.sections.browser=true}: the
 * demo wing's tables are made first, some 100 s of a processor, and kept in {@code target/sections}.
 */
@EnabledIfSystemProperty(named = "trimwright.sections.browser", matches = "true")
class ComputedExploreBrowserTest {
    private final SectionTables tables = new SectionTables(
            new TableCache(Path.of(System.getProperty("trimwright.target", "target"), "sections"), note -> {}));
    private final TargetBooks books = new TargetBooks(null, tables);

    @Test
    void eachNumberIsThatOfTheCommandWithTables(@TempDir Path folder) throws InterruptedException {
        books.sectionsOf(BoatFiles.find("whimbrel14").boat().getWing("tall"), SectionSource.COMPUTED, Progress.NONE);
        Browser browser = new Browser();
        try (browser;
                Library library = Library.openOrCreate(folder);
                Workbench workbench =
                        Workbench.start(Services.of(library, List.of(), books, SectionSource.COMPUTED), 0)) {
            Page page = browser.page(1440, 900);
            page.navigate(workbench.address() + "explore?boat=whimbrel14&wing=tall");
            ExploreBrowserTest.settled(page);
            assertThat(page.getByText("Sections: tables of computed flow.")).isVisible();
            int solved = ExploreBrowserTest.numbersAreTheCommands(page, this::command, options -> {});
            assertTrue(solved >= 15, "states with a flow: " + solved);
            browser.expectNoComplaint();
        }
    }

    private @Nullable JsonNode command(String... arguments) {
        JsonNode document = Command.answer(
                books,
                tables,
                Stream.concat(Arrays.stream(arguments), Stream.of("--section", "computed"))
                        .toArray(String[]::new));
        if (document != null) {
            assertEquals("computed", document.path("section").asText());
        }
        return document;
    }
}
