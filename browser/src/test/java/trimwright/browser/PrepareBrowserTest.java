package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boatfile.BoatFiles;
import trimwright.store.Library;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** Targets of the shipped boat and of a copy whose mass is changed. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PrepareBrowserTest {
    /** A book takes seconds on an idle machine; tests may share theirs with others. */
    private static final double BOOK_MILLIS = 240_000;

    private Browser browser;
    private Library library;
    private Workbench workbench;
    private Path copy;

    @BeforeAll
    void start(@TempDir Path folder) throws IOException {
        browser = new Browser();
        copy = folder.resolve("mine.toml");
        Files.writeString(copy, BoatFiles.shippedText("whimbrel14"));
        library = Library.openOrCreate(folder.resolve("library"));
        workbench = Workbench.start(Services.of(library, List.of(copy)), 0);
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
    void aPointIsChosenByMouseAndKeysAndShowsTrimAndWing() {
        Page page = open("?boat=whimbrel14&wing=tall&tws=16&mode=upwind", 1280, 800);
        assertThat(page.locator(".point h2")).containsText("16 kn of wind");
        assertThat(page.locator(".tags")).containsText("best upwind");
        assertThat(page.locator(".wing svg .station")).hasCount(3);
        Browser.keep(page, "prepare");

        Locator chart = page.locator(".lanes svg");
        chart.focus();
        page.keyboard().press("d");
        assertThat(page.locator(".tags")).containsText("best downwind");
        page.keyboard().press("ArrowUp");
        assertThat(page.locator(".point h2")).containsText("14 kn of wind");
        page.keyboard().press("Home");
        assertThat(page).hasURL(Pattern.compile("tws=14.*twa="));
        String before = page.locator(".point h2").textContent();
        page.keyboard().press("ArrowRight");
        assertThat(page.locator(".point h2")).not().hasText(before);

        BoundingBox lane = page.locator(".lane[data-tws='20'] .ground").boundingBox();
        page.mouse().click(lane.x + lane.width / 2, lane.y + lane.height / 2);
        assertThat(page.locator(".point h2")).containsText("20 kn of wind, 100");
        assertThat(page.locator(".lane-table h2")).containsText("20 kn");
        Browser.keep(page, "prepare-reach");
        page.locator(".lane-table").scrollIntoViewIfNeeded();
        Browser.keep(page, "prepare-table");
    }

    @Test
    void cardsAreComputedWhenOpenedAndLeadToExplore() {
        Page page = open("?boat=whimbrel14&wing=tall&tws=16&mode=upwind", 1440, 900);
        assertThat(page.locator(".cards a[download]")).hasCount(3);
        Locator gusts = page.locator("#card-gust");
        gusts.locator("summary").click();
        Locator rows = gusts.locator("table").first().locator("tbody tr");
        // Five changes by themselves, the three gusts with a shift to either side.
        assertThat(rows).hasCount(11, new LocatorAssertions.HasCountOptions().setTimeout(BOOK_MILLIS));
        assertThat(gusts).containsText("ease sheet");
        Locator loads = page.locator("#card-loads");
        loads.locator("summary").click();
        assertThat(loads)
                .containsText("best downwind", new LocatorAssertions.ContainsTextOptions().setTimeout(BOOK_MILLIS));
        page.locator(".cards").first().scrollIntoViewIfNeeded();
        Browser.keep(page, "prepare-cards");
        rows.last().locator("a").first().click();
        assertThat(page).hasURL(Pattern.compile("/explore\\?.*tws=22&"));
    }

    @Test
    void theChosenTrimIsOpenedInExploreWhichFindsTheTargetThere() {
        Page page = open("?boat=whimbrel14&wing=tall&tws=16&twa=60", 1440, 900);
        String sheet = page.locator(".point .band")
                .filter(new Locator.FilterOptions().setHasText("Sheet load"))
                .locator(".number")
                .first()
                .textContent();
        page.getByText("Explore this trim").click();
        assertThat(page.locator(".explore-grid[data-shown=now]")).isVisible();
        assertThat(page).hasURL(Pattern.compile("/explore\\?.*tws=16&twa=60&"));
        assertEquals(
                Double.parseDouble(sheet.replace(" kN", "")),
                Double.parseDouble(page.locator(".explore-figures [data-path=sheet_load_n]")
                        .textContent()),
                0.02,
                "fewer strips there than here");
        String there = page.locator("[data-control=sheet] input[type=text]").inputValue();
        page.locator("[data-control=sheet] input[type=range]").focus();
        page.keyboard().press("PageUp");
        assertThat(page.locator("[data-control=sheet] input[type=text]")).not().hasValue(there);
        page.locator(".go-target").click();
        assertThat(page.locator("[data-control=sheet] input[type=text]"))
                .hasValue(there, new LocatorAssertions.HasValueOptions().setTimeout(BOOK_MILLIS));
        assertThat(page.locator("[data-control=sheet] .control-mark")).isVisible();
        Browser.keep(page, "explore-target");
    }

    /** The aim can be sailed: Explore shows its sheet load there; on a gustier day it lies lower and costs more. */
    @Test
    void theAimFollowsTheTurbulenceAndIsOpenedInExplore() {
        Page page = open("?boat=whimbrel14&wing=tall&tws=16&twa=70", 390, 844);
        Locator aim = page.locator(".point dl.aim");
        assertThat(page.locator(".point")).containsText("turbulence 8.0 %");
        assertThat(page.locator(".point .band .aim")).hasCount(3);
        assertEquals(390, ((Number) page.evaluate("document.documentElement.scrollWidth")).intValue());
        double usual = aimMoment(page);
        page.locator("input[name=turbulence]").fill("12");
        page.locator("input[name=turbulence]").press("Enter");
        assertThat(page.locator(".point"))
                .containsText("turbulence 12.0 %", new LocatorAssertions.ContainsTextOptions().setTimeout(BOOK_MILLIS));
        assertTrue(aimMoment(page) < usual - 3, "on a gustier day less is carried");
        assertThat(page.locator("[aria-labelledby=plans-title]")).containsText("12 % turbulence");
        Browser.keep(page, "prepare-aim");
        Matcher load = Pattern.compile("Sheet load\\s*([0-9.]+) kN").matcher(String.valueOf(aim.textContent()));
        assertTrue(load.find(), aim.textContent());
        page.getByText("Explore the aim").click();
        assertThat(page.locator(".explore-grid[data-shown=now]")).isVisible();
        assertEquals(
                Double.parseDouble(load.group(1)),
                Double.parseDouble(page.locator(".explore-figures [data-path=sheet_load_n]")
                        .textContent()),
                0.02,
                "fewer strips there than here");
    }

    private static double aimMoment(Page page) {
        String text = String.valueOf(page.locator(".point dl.aim").textContent());
        Matcher moment = Pattern.compile("Righting moment\\s*([0-9]+) kN m").matcher(text);
        assertTrue(moment.find(), text);
        return Double.parseDouble(moment.group(1));
    }

    @Test
    void itReadsOnATabletAndOnAWideScreen() {
        Page tablet = open("?boat=whimbrel14&wing=tall&tws=22&mode=downwind", 834, 1112);
        assertThat(tablet.locator(".wing svg .station")).hasCount(3);
        assertTrue((boolean) tablet.evaluate("document.documentElement.scrollWidth <= window.innerWidth"));
        Browser.keep(tablet, "prepare-tablet");
        Page wide = open("?boat=whimbrel14&wing=tall&tws=10&mode=upwind", 1920, 1080);
        assertThat(wide.locator(".wing svg .station")).hasCount(3);
        Browser.keep(wide, "prepare-wide");
    }

    @Test
    void aChangedMassInACopiedBoatFileMovesTheLanesAndTheOldOnesStayForComparison() throws IOException {
        Page page = open("?boat=mine&wing=tall&tws=12&mode=upwind", 1280, 800);
        Locator label = page.locator(".lane[data-tws='12'] .best-label").first();
        String before = label.textContent();
        assertThat(page.locator(".line-earlier")).hasCount(0);

        changePlatformMass(750);
        page.getByText("Read the file again").click();
        Locator earlier = page.locator(".lane[data-tws='12'] .line-earlier").first();
        assertThat(earlier).isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(BOOK_MILLIS));
        assertThat(label).not().hasText(before);
        assertNotEquals(
                earlier.getAttribute("d"),
                page.locator(".lane[data-tws='12'] .line-foiling").first().getAttribute("d"));
        Browser.keep(page, "prepare-changed");
        page.getByText("Hide").click();
        assertThat(page.locator(".line-earlier")).hasCount(0);

        changePlatformMass(-9000);
        page.getByText("Read the file again").click();
        assertThat(page.locator(".fault")).containsText("platform.mass_kg");
        Browser.keep(page, "prepare-faults");
    }

    /** Adds so many kilograms to the platform, the first mass of the file. */
    private void changePlatformMass(int more) throws IOException {
        String text = Files.readString(copy);
        Matcher mass = Pattern.compile("(?m)^mass_kg = (\\d+)").matcher(text);
        assertTrue(mass.find(), "the shipped boat file has no platform mass");
        String changed = "mass_kg = " + (Integer.parseInt(mass.group(1)) + more);
        Files.writeString(copy, text.substring(0, mass.start()) + changed + text.substring(mass.end()));
    }

    private Page open(String choice, int width, int height) {
        Page page = browser.page(width, height);
        page.navigate(workbench.address() + "prepare" + choice);
        assertThat(page.locator(".lanes svg").first())
                .isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(BOOK_MILLIS));
        return page;
    }
}
