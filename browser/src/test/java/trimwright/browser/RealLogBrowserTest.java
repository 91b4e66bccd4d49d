package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import trimwright.evidence.ReferenceFiles;
import trimwright.evidence.ReferenceTest;
import trimwright.store.Library;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** The debrief of a real passage, opened from the Library as a user would. */
class RealLogBrowserTest {
    private static final String LOG = "rob-passage-2010-11-21.nmea.gz";

    @ReferenceTest
    void aRealPassageIsOpenedReadAndCutUp(@TempDir Path folder) {
        Imported.into(folder, ReferenceFiles.get("data/" + LOG).toString(), "--boat-name", "passage");
        try (Library library = Library.open(folder);
                Browser browser = new Browser();
                Workbench workbench = Workbench.start(Services.of(library, List.of(), SharedBooks.get()), 0)) {
            Page page = browser.page(1280, 800);
            page.navigate(workbench.address() + "library");
            Browser.keep(page, "real-library");
            page.locator("table.sessions a[href^='/debrief/']").click();
            Locator findings = page.locator(".findings");
            assertThat(findings).isVisible();
            assertThat(page.locator(".lane-box[data-lane=wind_speed]")).containsText("TWS");
            Browser.keep(page, "real-debrief");

            Locator shown = page.locator(".window-shown");
            String whole = shown.textContent();
            BoundingBox stack = page.locator(".lane-stack").boundingBox();
            page.mouse().move(stack.x + 300, stack.y + 80);
            page.mouse().wheel(0, -600);
            assertThat(shown).not().hasText(whole);
            assertThat(page.locator(".lane-box[data-lane=speed] .entry b").first())
                    .hasText(java.util.regex.Pattern.compile("\\d\\.\\d"));
            Browser.keep(page, "real-zoomed");

            for (String tab : List.of("account", "turns", "data", "doubts")) {
                page.locator("#tab-" + tab).click();
                assertThat(page.locator("#tab-" + tab)).hasAttribute("aria-selected", "true");
                Browser.keep(page, "real-" + tab);
            }
            page.locator("#tab-phases").click();
            Locator phase = page.locator(".findings tbody tr").first();
            phase.click();
            assertThat(phase).hasClass("pick chosen");
            assertFalse(shown.textContent().equals(whole));
            Browser.keep(page, "real-phase");
            browser.expectNoComplaint();
        }
    }
}
