package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.WebSocket;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletionException;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.prepare.BookCache;
import trimwright.prepare.SectionTables;
import trimwright.prepare.TargetBooks;
import trimwright.store.Library;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** Practice, sailed in a browser: keys move the wing, a drill can be stopped and ends by itself, others are kept out. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PracticeBrowserTest {
    private static final LocatorAssertions.IsVisibleOptions WHEN_COMPUTED =
            new LocatorAssertions.IsVisibleOptions().setTimeout(240_000);

    private Browser browser;
    private Library library;
    private Workbench workbench;

    @BeforeAll
    void start(@TempDir Path folder) {
        InventedSession.write(folder);
        browser = new Browser();
        library = Library.open(folder);
        BookCache kept =
                new BookCache(Path.of(System.getProperty("trimwright.target", "target"), "kept-books"), note -> {});
        workbench = Workbench.start(Services.of(library, List.of(), new TargetBooks(kept, new SectionTables())), 0);
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
    void keysMoveTheWingAndTheBoatAnswers() {
        Page page = open("drill=hold&mine=sheet,twist,camber,inversion&waves=0.2");
        assertThat(page.locator(".word")).hasText("The wing is yours");
        double sheet = degrees(page.locator(".gauge.sheet output"));
        double camber = degrees(page.locator(".gauge.camber output"));
        page.keyboard().down("ArrowDown");
        page.keyboard().down("KeyF");
        page.waitForTimeout(1_000);
        page.keyboard().up("ArrowDown");
        page.keyboard().up("KeyF");
        page.waitForTimeout(300);
        double eased = degrees(page.locator(".gauge.sheet output"));
        double flatter = degrees(page.locator(".gauge.camber output"));
        assertTrue(eased > sheet + 4, sheet + " and then " + eased);
        assertTrue(flatter < camber - 3, camber + " and then " + flatter);
        assertThat(page.locator("[data-figure=boat_speed_kn]")).hasText(Pattern.compile("\\d+\\.\\d"));
        assertThat(page.locator(".lost-line")).hasAttribute("d", Pattern.compile("M.+L.+"));
        Browser.keep(page, "practice");
        page.getByText("Stop", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page.locator("button.start")).isVisible();
    }

    @Test
    void aCamberPutOverTooEarlyEndsTheDrillAndSaysSo() {
        Page page = open("drill=tack&mine=inversion");
        assertThat(page.locator(".word")).hasText("The wing is yours");
        page.keyboard().press("Space");
        Locator result = page.locator(".drill-result");
        assertThat(result).containsText("Capsized", new LocatorAssertions.ContainsTextOptions().setTimeout(30_000));
        assertThat(result).containsText("the computed trimmer lost");
        assertThat(result.locator("button.start")).isVisible();
        Browser.keep(page, "practice-result");
    }

    @Test
    void wavesAreSailedAsAskedOrRefused() {
        Page page = open("drill=hold", false);
        assertThat(page.locator("input[type=number]").last()).hasValue("0");
        String ask = workbench.address()
                + "api/practice/yardstick?boat=whimbrel14&wing=tall&drill=hold&tws_kn=14&seed=1&waves=";
        String sailed = page.request().get(ask + "0.3,3").text();
        assertTrue(sailed.contains("\"significant_height_m\":0.3") && sailed.contains("\"peak_period_s\":3"), sailed);
        String flat = page.request().get(ask + "0").text();
        assertTrue(flat.contains("\"lost_s\"") && !flat.contains("significant_height_m"), flat);
        APIResponse refused = page.request().get(ask + "3");
        assertEquals(400, refused.status());
        assertTrue(refused.text().contains("outside 0 to 1"), refused.text());
    }

    @Test
    void aKeyIsBoundAnewAndStaysSo() {
        Page page = open("drill=hold&mine=sheet", false);
        Locator haul = page.locator(".bindings button.key").first();
        haul.click();
        page.keyboard().press("KeyQ");
        assertThat(haul).hasText("Q");
        page.reload();
        assertThat(page.locator(".bindings button.key").first()).hasText("Q");
    }

    @Test
    void theWholeStageIsSeenAtOnceOnATabletAndALaptop() {
        for (int[] size : new int[][] {{1280, 800}, {1440, 900}, {1180, 820}}) {
            Page page = browser.page(size[0], size[1]);
            page.navigate(workbench.address() + "practice?drill=hold");
            assertThat(page.locator("button.start")).isVisible(WHEN_COMPUTED);
            BoundingBox trace = page.locator(".trace svg").boundingBox();
            BoundingBox caution = page.locator("footer.caution").boundingBox();
            assertTrue(
                    trace.y + trace.height < caution.y,
                    size[0] + ": " + (trace.y + trace.height) + " below " + caution.y);
            assertEquals(
                    page.evaluate("document.documentElement.clientWidth"),
                    page.evaluate("document.documentElement.scrollWidth"));
            Browser.keep(page, "practice-" + size[0]);
        }
    }

    @Test
    void anotherSitesPageCannotSail() {
        URI address = URI.create(workbench.address().replace("http", "ws")
                + "ws/practice?boat=whimbrel14&wing=tall&drill=hold&tws_kn=14&seed=1");
        CompletionException refused = Assertions.assertThrows(
                CompletionException.class,
                () -> HttpClient.newHttpClient()
                        .newWebSocketBuilder()
                        .header("Origin", "http://elsewhere.example")
                        .buildAsync(address, new WebSocket.Listener() {})
                        .join());
        assertTrue(String.valueOf(refused.getCause()).contains("Handshake"), String.valueOf(refused));
    }

    private Page open(String choice) {
        return open(choice, true);
    }

    private Page open(String choice, boolean starts) {
        Page page = browser.page(1440, 900);
        page.navigate(workbench.address() + "practice?" + choice);
        assertThat(page.locator("button.start")).isVisible(WHEN_COMPUTED);
        if (starts) {
            page.locator("button.start").click();
        }
        return page;
    }

    private static double degrees(Locator output) {
        return Double.parseDouble(output.innerText().replace("\u2212", "-").replace("\u00b0", ""));
    }
}
