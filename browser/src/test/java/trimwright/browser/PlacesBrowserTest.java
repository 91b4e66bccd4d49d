package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.LoadState;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.store.Library;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** What every place has in common: caution, weight, time to the first picture, an empty library. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlacesBrowserTest {
    /** Warm, best of five: the goal is one second on an idle machine of two cores. */
    private static final double FIRST_PICTURE_MILLIS = 1000;

    private static final double MOST_KILOBYTES = 120;

    private Browser browser;
    private Library library;
    private Workbench workbench;

    @BeforeAll
    void start(@TempDir Path folder) {
        browser = new Browser();
        library = Library.openOrCreate(folder);
        workbench = Workbench.start(Services.of(library, List.of(), SharedBooks.get()), 0);
    }

    @AfterAll
    void stop() {
        workbench.close();
        library.close();
        browser.close();
    }

    @Test
    void anEmptyLibrarySaysHowToFillIt() {
        Page page = browser.page(1280, 800);
        page.navigate(workbench.address() + "library");
        assertThat(page.locator(".empty")).containsText("trimwright import");
        assertThat(page.locator(".caution")).containsText("Caution.");
        page.locator(".caution summary").click();
        assertThat(page.locator(".caution p")).containsText("No glance at a screen replaces a lookout");
        Browser.keep(page, "library-empty");
        browser.expectNoComplaint();
    }

    @Test
    void theFirstPictureIsThereWithinASecondAndThePagesAreLight() {
        Page page = browser.page(1280, 800);
        double best = Double.MAX_VALUE;
        for (int i = 0; i < 5; i++) {
            page.navigate(workbench.address() + "library");
            assertThat(page.locator("h1")).isVisible();
            best = Math.min(best, number(page, "performance.getEntriesByName('first-contentful-paint')[0].startTime"));
        }
        System.out.printf("first picture after %.0f ms%n", best);
        assertTrue(best < FIRST_PICTURE_MILLIS, best + " ms");

        Page fresh = browser.page(1280, 800);
        fresh.navigate(workbench.address() + "library");
        fresh.waitForLoadState(LoadState.NETWORKIDLE);
        double kilobytes = number(
                        fresh,
                        "[...performance.getEntriesByType('resource'), ...performance.getEntriesByType('navigation')]"
                                + ".reduce((sum, one) => sum + one.transferSize, 0)")
                / 1000;
        System.out.printf("library page: %.1f kB over the wire%n", kilobytes);
        assertTrue(kilobytes < MOST_KILOBYTES, kilobytes + " kB");
    }

    @Test
    void placesAreReachedByKeyboardAlone() {
        Page page = browser.page(1280, 800);
        page.navigate(workbench.address() + "library");
        assertThat(page.locator("h1")).isVisible();
        page.keyboard().press("Tab");
        assertThat(page.locator(".skip")).isFocused();
        page.keyboard().press("Enter");
        assertEquals("place", page.evaluate("document.activeElement.id"));
        page.locator("nav a[href='/library']").focus();
        page.keyboard().press("Enter");
        assertThat(page).hasURL(workbench.address() + "library");
        browser.expectNoComplaint();
    }

    private static double number(Page page, String expression) {
        return ((Number) page.evaluate(expression)).doubleValue();
    }
}
