package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** The tab Instruments of Debrief: what was found, accepted, seen in the debrief, taken back. */
class CalibrationBrowserTest {
    @Test
    void aCalibrationIsAcceptedAndTakenBack(@TempDir Path folder) {
        SessionInfo session = InventedRace.write(folder);
        try (Browser browser = new Browser();
                Library library = Library.open(folder);
                Workbench workbench = Workbench.start(Services.of(library, List.of(), SharedBooks.get()), 0)) {
            Page page = browser.page(1440, 900);
            page.navigate(workbench.address() + "debrief/" + session.id());
            page.locator("#tab-instruments").click();
            assertThat(page.locator("#calibration")).containsText("No calibration is in force");
            assertThat(page.locator("#tab-panel tbody")).containsText("wind angle offset");
            assertThat(page.locator("figure.calibration svg")).hasCount(2);
            assertThat(page.locator("button[name=undo]")).isDisabled();
            Browser.keep(page, "calibration");
            page.locator("button[name=accept]").click();
            assertThat(page.locator("#calibration")).containsText("accepted and taken off");
            Browser.keep(page, "calibration-accepted");
            page.locator("button[name=undo]").click();
            assertThat(page.locator("#calibration")).containsText("No calibration is in force");
            browser.expectNoComplaint();
        }
    }
}
