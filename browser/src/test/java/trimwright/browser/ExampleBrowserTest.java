package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.store.Library;
import trimwright.web.BoatRoutes;
import trimwright.web.BoatShelf;
import trimwright.web.DebriefShelf;
import trimwright.web.SessionRoutes;
import trimwright.web.SessionShelf;
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
        BoatShelf boats = new BoatShelf(List.of());
        try (Library library = Library.open(folder);
                Browser browser = new Browser();
                Workbench workbench = start(library, boats)) {
            Page page = browser.page(1280, 800);
            page.navigate(workbench.address() + "debrief");
            assertThat(page.locator(".findings")).isVisible();
            page.getByLabel("Held against").selectOption("whimbrel14/tall");
            assertThat(page.locator(".findings")).isVisible();
            assertThat(page.locator(".lane-box[data-lane=wing]")).containsText("Camber");
            Browser.keep(page, "example-debrief");
            page.locator("#tab-turns").click();
            assertThat(page.locator(".findings tbody")).containsText("tack");
            page.locator(".findings tbody tr").first().click();
            Browser.keep(page, "example-turn");
            browser.expectNoComplaint();
        }
    }

    private static Workbench start(Library library, BoatShelf boats) {
        SessionShelf sessions = new SessionShelf(library);
        return Workbench.start(
                List.of(new BoatRoutes(boats), new SessionRoutes(sessions, new DebriefShelf(sessions, boats))), 0);
    }
}
