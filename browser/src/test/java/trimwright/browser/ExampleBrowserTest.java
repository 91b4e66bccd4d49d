package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.store.Library;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** The example log that comes with the program, held against the boat file that describes its sensors. */
class ExampleBrowserTest {
    @Test
    void theExampleIsDebriefedWithItsBoat(@TempDir Path folder) {
        Imported.into(
                folder,
                Imported.project("examples/saltmere/dunlin.nmea"),
                Imported.project("examples/saltmere/dunlin-wing.csv"),
                "--map",
                Imported.project("examples/saltmere/wing-map.toml"),
                "--boat-name",
                "Dunlin");
        try (Library library = Library.open(folder);
                Browser browser = new Browser();
                Workbench workbench = Workbench.start(Services.of(library, List.of()), 0)) {
            Page page = browser.page(1280, 800);
            page.navigate(workbench.address() + "debrief");
            assertThat(page.locator(".findings")).isVisible();
            page.getByLabel("Held against").selectOption("whimbrel14/tall");
            // The target book is computed first.
            assertThat(page.locator(".findings"))
                    .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(240_000));
            assertThat(page.locator(".findings")).containsText("against the target");
            assertThat(page.locator(".lane-box[data-lane=wing]")).containsText("Camber");
            Browser.keep(page, "example-debrief");
            page.locator("#tab-turns").click();
            assertThat(page.locator(".findings tbody")).containsText("tack");
            page.locator(".findings tbody tr").first().click();
            Browser.keep(page, "example-turn");
            browser.expectNoComplaint();
        }
    }
}
