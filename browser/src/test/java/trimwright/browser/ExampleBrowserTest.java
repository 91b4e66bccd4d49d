package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.prepare.TargetBooks;
import trimwright.store.Library;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** The example log that comes with the program and the boat file that describes its sensors: page against command. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExampleBrowserTest {
    private static final LocatorAssertions.IsVisibleOptions WHEN_COMPUTED =
            new LocatorAssertions.IsVisibleOptions().setTimeout(240_000);

    private Path folder;
    private Browser browser;
    private Library library;
    private Workbench workbench;
    private TargetBooks books;

    @BeforeAll
    void start(@TempDir Path folder) {
        this.folder = folder;
        Imported.into(
                folder,
                Imported.project("examples/saltmere/dunlin.nmea"),
                Imported.project("examples/saltmere/dunlin-wing.csv"),
                "--map",
                Imported.project("examples/saltmere/wing-map.toml"),
                "--boat-name",
                "Dunlin");
        browser = new Browser();
        library = Library.open(folder);
        books = SharedBooks.get();
        workbench = Workbench.start(Services.of(library, List.of(), books), 0);
    }

    @AfterAll
    void stop() {
        workbench.close();
        library.close();
        browser.close();
    }

    @AfterEach
    void thePagesHadNothingToComplainAbout() {
        browser.expectNoComplaint();
    }

    @Test
    void theExampleIsDebriefedWithItsBoat() {
        Page page = browser.page(1280, 800);
        page.navigate(workbench.address() + "debrief");
        assertThat(page.locator(".findings")).isVisible();
        // A page begins with what the session was judged by last, maybe by another test.
        page.getByLabel("Held against").selectOption("");
        assertThat(page.locator(".findings")).isVisible();
        // Nothing to aim at is known without a boat file.
        assertThat(page.locator(".lane-box[data-lane=speed]")).not().containsText("Target speed");
        page.getByLabel("Held against").selectOption("whimbrel14/tall");
        assertThat(page.locator(".findings")).isVisible(WHEN_COMPUTED);
        page.locator("#tab-phases").click();
        assertThat(page.locator(".findings")).containsText("against the target");
        assertThat(page.locator(".lane-box[data-lane=wing]")).containsText("Camber");
        Locator target = page.locator(".lane-box[data-lane=speed] .entry")
                .filter(new Locator.FilterOptions().setHasText("Target speed"));
        BoundingBox stack = page.locator(".lane-stack").boundingBox();
        page.mouse().move(stack.x + stack.width * 0.3, stack.y + 100);
        assertThat(target.locator("b")).hasText(Pattern.compile("\\d\\d\\.\\d"));
        Browser.keep(page, "example-debrief");
        page.locator("#tab-turns").click();
        assertThat(page.locator(".findings tbody")).containsText("tack");
        page.locator(".findings tbody tr").first().click();
        Browser.keep(page, "example-turn");

        // Opened again with nothing in the address, the page keeps to what the session was judged by last.
        Page again = browser.page(1280, 800);
        again.navigate(workbench.address() + "debrief");
        assertThat(again.getByLabel("Held against")).hasValue("whimbrel14/tall");
    }

    @Test
    void everyTargetOfPrepareIsThatOfTheCommand() {
        JsonNode points = Command.json(books, "targets", "--boat", "whimbrel14", "--wing", "tall", "--json")
                .get("points");
        int compared = 0;
        Page page = browser.page(1280, 800);
        for (int tws = 6; tws <= 26; tws += 2) {
            page.navigate(workbench.address() + "prepare?boat=whimbrel14&wing=tall&mode=upwind&tws=" + tws);
            assertThat(page.locator(".lane-table h2")).isVisible(WHEN_COMPUTED);
            assertThat(page.locator(".lane-table h2")).containsText(tws + " kn");
            List<List<String>> expected = Shown.targets(points, tws);
            assertEquals(expected, Shown.rows(page, ".lane-table tbody tr"), tws + " kn");
            compared += expected.size();
        }
        // 29 angles in each of 11 winds, and best points besides.
        assertTrue(compared > 11 * 29, compared + " points");
    }

    @Test
    void theFiguresOfTheDebriefAreThoseOfTheCommand() {
        JsonNode report = Command.json(
                books, "debrief", "latest", "--boat", "whimbrel14", "--json", "--library", folder.toString());
        JsonNode boat = report.get("boats").get(0);
        Page page = browser.page(1280, 800);
        page.navigate(workbench.address() + "debrief?boat=whimbrel14&wing=tall");
        assertThat(page.locator(".findings")).isVisible(WHEN_COMPUTED);
        assertEquals(Shown.ledger(boat), Shown.figures(page));
        page.locator("#tab-phases").click();
        assertThat(page.locator(".findings")).containsText("Differs by");
        assertTrue(Shown.phases(boat).size() > 4, "steady phases of the example");
        assertEquals(Shown.phases(boat), Shown.figures(page));
        page.locator("#tab-turns").click();
        assertThat(page.locator(".findings")).containsText("In kn");
        assertEquals(Shown.turns(boat), Shown.figures(page));
    }
}
