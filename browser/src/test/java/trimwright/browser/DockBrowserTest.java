package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.Main;
import trimwright.cli.ProgressStyle;
import trimwright.store.Library;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** The dock check's page: the numbers of the command, stops first, the crew's list by the clock. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DockBrowserTest {
    private static final String ASKED = "?pull_n=1500&antenna_aft_m=12.5&antenna_starboard_m=0";

    private Browser browser;
    private Library library;
    private Workbench workbench;
    private JsonNode check;
    private Path shelf;

    @BeforeAll
    void start(@TempDir Path folder) throws JsonProcessingException {
        shelf = folder.resolve("library");
        Path morning = folder.resolve("morning");
        run("simulate", "--dock", "--seed", "3", "--out", morning.toString());
        Imported.into(
                shelf,
                morning.resolve("logs/dunlin.nmea").toString(),
                morning.resolve("logs/dunlin-wing.csv").toString(),
                "--map",
                morning.resolve("wing-map.toml").toString());
        check = new ObjectMapper()
                .readTree(run(
                        "dock-check",
                        "latest",
                        "--boat",
                        "whimbrel14",
                        "--pull",
                        "1500",
                        "--antenna-aft",
                        "12.5",
                        "--antenna-starboard",
                        "0",
                        "--library",
                        shelf.toString(),
                        "--json"));
        browser = new Browser();
        library = Library.open(shelf);
        workbench = Workbench.start(Services.of(library, List.of()), 0);
    }

    private static String run(String... line) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int exit = Main.runner(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        ProgressStyle.NONE,
                        Map.of())
                .run(line);
        assertEquals(0, exit, err.toString(StandardCharsets.UTF_8));
        return out.toString(StandardCharsets.UTF_8);
    }

    @AfterAll
    void stop() {
        workbench.close();
        library.close();
        browser.close();
    }

    @Test
    void theLibraryLeadsToTheCheckWhoseLinesAreThoseOfTheCommand() {
        Page page = browser.page(1280, 900);
        page.navigate(workbench.address() + "library");
        page.getByRole(
                        AriaRole.LINK,
                        new Page.GetByRoleOptions().setName("Dock check").setExact(true))
                .click();
        assertThat(page.locator(".dock-lines h2")).containsText("to put right first");
        page.navigate(workbench.address() + "dock/latest" + ASKED);
        assertThat(page.locator(".dock-lines h2"))
                .hasText(check.path("stop").asInt() + " to put right first, "
                        + check.path("note").asInt() + " to know, "
                        + check.path("pass").asInt() + " pass");
        page.locator(".dock-lines details summary").click();
        assertThat(page.locator(".dock-lines li")).hasCount(check.path("lines").size());
        for (JsonNode line : check.path("lines")) {
            String what = line.path("what").asText();
            var shown = page.locator(".dock-lines li")
                    .filter(new Locator.FilterOptions()
                            .setHas(page.getByText(what, new Page.GetByTextOptions().setExact(true))));
            assertThat(shown).hasClass(line.path("verdict").asText());
            if (!line.path("read").asText().equals("-")) {
                assertThat(shown).containsText(line.path("read").asText());
            }
            assertThat(shown).containsText(line.path("says").asText());
        }
        // What must be put right stands above all else.
        assertThat(page.locator(".dock-lines li").first()).hasClass("stop");
        assertThat(page.locator(".dock-lines pre")).containsText("camber_deg_per_s = 6.5");
        Browser.keep(page, "dock");
        browser.expectNoComplaint();
    }

    @Test
    void aCheckIsKeptWhenAskedAndFitsAPhone() {
        Page page = browser.page(390, 844);
        page.navigate(workbench.address() + "dock/latest?pull_n=1490");
        page.getByText("Keep with the session").click();
        assertThat(page.getByText("Kept; nothing else was changed.")).isVisible();
        String id = library.sessions().get(0).id();
        // The command kept the first.
        assertTrue(Files.exists(shelf.resolve("sessions/" + id + "/dock/002-dunlin.json")));
        Browser.keep(page, "dock-phone");
        int width = ((Number) page.evaluate("document.documentElement.scrollWidth")).intValue();
        assertTrue(width <= 390, "the page is " + width + " wide");
        browser.expectNoComplaint();
    }

    @Test
    void theListCallsEachStepByTheClock() {
        Page page = browser.page(390, 844);
        page.navigate(workbench.address() + "dock");
        assertThat(page.locator(".dock-list li")).hasCount(12);
        page.getByText("Begin the list").click();
        assertThat(page.locator(".dock-list .now")).containsText("All still");
        // As it looks after a minute and a half.
        page.evaluate("localStorage.setItem('trimwright.dock.begun', String(Date.now() - 90000))");
        page.reload();
        assertThat(page.locator(".dock-list .now")).containsText("starboard hull");
        assertThat(page.locator(".dock-list .now")).containsText("s left");
        assertThat(page.locator(".dock-list .past")).hasCount(1);
        browser.expectNoComplaint();
    }
}
