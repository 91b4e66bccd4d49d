package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.plans.KeptPlans;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** A race of three boats on the debrief page: strips, boats, ledger, one cursor. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FleetBrowserTest {
    private Browser browser;
    private Library library;
    private Workbench workbench;
    private SessionInfo session;

    @BeforeAll
    void start(@TempDir Path folder) {
        browser = new Browser();
        session = InventedRace.write(folder);
        new KeptPlans(folder).keep(plan());
        library = Library.open(folder);
        workbench = Workbench.start(Services.of(library, List.of(), SharedBooks.get()), 0);
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
    void eachLegIsAStripWithALineAndALetterForEachBoat() {
        Page page = open("", 1440, 900);
        assertThat(page.locator(".strip")).hasCount(2);
        Locator beat = page.locator(".strip[data-leg='1']");
        assertThat(beat).containsText("upwind");
        assertThat(beat).containsText("to windward");
        assertThat(beat.locator("path.line")).hasCount(3);
        assertThat(beat.locator("path.area")).hasCount(1);
        // No line is told by its colour alone.
        assertEquals(
                3,
                beat.locator("path.line").all().stream()
                        .map(line -> line.getAttribute("stroke-dasharray"))
                        .distinct()
                        .count());
        assertThat(beat.locator("text.end")).hasText(new Pattern[] {
            Pattern.compile("[ACD] .*"), Pattern.compile("[ACD] .*"), Pattern.compile("[ACD] .*")
        });
        Browser.keep(page, "fleet");

        page.getByLabel("Show Dunlin beside").uncheck();
        assertThat(beat.locator("path.line")).hasCount(2);
    }

    /** On a telephone: the six lines are those of the command, the crew's line is kept, a line opens the debrief at its moment. */
    @Test
    void betweenRacesSixLinesSayWhatTheCommandSays() {
        JsonNode quick = Command.json(
                SharedBooks.get(),
                "debrief",
                session.id(),
                "--quick",
                "--own",
                "Dunlin",
                "--json",
                "--library",
                library.folder().toString());
        Page page = browser.page(390, 844);
        page.navigate(workbench.address() + "quick/" + session.id() + "?of=Dunlin");
        Locator lines = page.locator(".six li");
        assertThat(lines).hasCount(quick.path("lines").size());
        for (int i = 0; i < quick.path("lines").size(); i++) {
            assertThat(lines.nth(i))
                    .containsText(quick.path("lines").path(i).path("sentence").asText());
        }
        Browser.keep(page, "quick");
        page.getByLabel("Next race we change").fill("later over");
        page.getByText("Keep", new Page.GetByTextOptions().setExact(true)).click();
        assertThat(page.getByText("Kept; the next quick debrief judges it.")).isVisible();
        page.locator(".six a").first().click();
        assertThat(page.locator(".window-shown")).isVisible();
        assertTrue(page.url().contains("at="), page.url());
    }

    @Test
    void whatEachBoatLostOnEachLegIsWhatTheCommandSays() {
        JsonNode report = Command.json(
                SharedBooks.get(),
                "debrief",
                session.id(),
                "--json",
                "--library",
                library.folder().toString());
        Page page = open("", 1440, 900);
        for (int leg = 1; leg <= 2; leg++) {
            Set<String> expected = new TreeSet<>();
            for (JsonNode boat : report.get("boats")) {
                JsonNode account = boat.get("ledger").get(leg - 1);
                assertEquals(leg, account.get("leg").asInt());
                expected.add(boat.get("boat").asText().charAt(0) + " "
                        + Shown.text(account.get("total_s").asDouble(), 1));
            }
            Locator ends = page.locator(".strip[data-leg='" + leg + "'] text.end");
            assertEquals(expected, new TreeSet<>(ends.allTextContents()));
        }
    }

    @Test
    void theBoatLookedAtIsChosenByKeysAndStaysInTheAddress() {
        Page page = open("", 1440, 900);
        String area = page.locator(".strip[data-leg='1'] path.area").getAttribute("d");
        page.locator(".boats input[type=radio]").first().focus();
        page.keyboard().press("ArrowRight");
        assertThat(page.locator(".boat.focus")).containsText("Curlew");
        assertTrue(page.url().endsWith("of=Curlew"), page.url());
        assertNotEquals(area, page.locator(".strip[data-leg='1'] path.area").getAttribute("d"));
        page.reload();
        assertThat(page.locator(".boat.focus")).containsText("Curlew");
    }

    @Test
    void oneCursorRunsThroughStripsChannelsAndBoats() {
        Page page = open("?see=both", 1440, 900);
        assertThat(page.locator(".lane-box canvas").first()).isVisible();
        BoundingBox strip = page.locator(".strip[data-leg='1'] > svg").boundingBox();
        page.mouse().move(strip.x + 0.4 * strip.width, strip.y + 20);
        assertThat(page.locator(".strip[data-leg='1'] .dot")).hasCount(3);
        assertThat(page.locator(".cursor")).isVisible();
        assertThat(page.locator(".lost-here")).hasCount(3);
        assertThat(page.locator(".lost-here").first()).hasText(Pattern.compile("leg 1 .?\\d+\\.\\d s"));
        Browser.keep(page, "fleet-both");

        page.locator(".strips").focus();
        String before = page.locator(".cursor").textContent();
        page.keyboard().press("ArrowRight");
        assertThat(page.locator(".cursor")).not().hasText(before);
        String shown = page.locator(".window-shown").textContent();
        page.keyboard().press("ArrowDown");
        assertThat(page.locator(".window-shown")).not().hasText(shown);
        // Where strips share the room with channels, only legs of the window are shown.
        assertThat(page.locator(".strip")).hasCount(1);
        assertThat(page.locator(".strip")).hasAttribute("data-leg", "2");
    }

    @Test
    void anotherBoatsChannelsAreDrawnBesideThoseOfTheBoatLookedAt() {
        Page page = open("?see=both&of=Avocet", 1440, 900);
        Locator speed = page.locator(".lane-box[data-lane=speed] .entry").first();
        assertThat(speed.locator(".beside")).hasCount(0);
        page.getByLabel("Channels beside").selectOption("Dunlin");
        BoundingBox lanes = page.locator(".lane-stack").boundingBox();
        page.mouse().move(lanes.x + lanes.width * 0.3, lanes.y + 40);
        // 10 m/s and 90 % of it on the same tack.
        assertThat(speed.locator("b")).hasText("19.4");
        assertThat(speed.locator(".beside")).hasText("D 17.5");
        assertTrue(page.url().contains("beside=Dunlin"), page.url());
        Browser.keep(page, "fleet-beside");
    }

    @Test
    void aFigureOfTheLedgerOpensIntoTheStretchesThatMakeItUp() {
        Page page = open("", 1440, 900);
        Locator grid = page.locator(".grid");
        assertThat(grid.locator("thead th")).hasText(new String[] {"Cause", "1", "2", "All", "\u00b1"});
        Locator row = grid.locator("tbody tr")
                .filter(new Locator.FilterOptions()
                        .setHas(page.locator("th").getByText("turns", new Locator.GetByTextOptions())));
        Locator figure = row.first().locator("button").last();
        figure.focus();
        page.keyboard().press("Enter");
        assertThat(figure).hasAttribute("aria-pressed", "true");
        Locator pieces = page.locator(".pieces tbody tr");
        assertThat(pieces.first()).isVisible();
        double sum = pieces.locator("td:nth-child(3)").allInnerTexts().stream()
                .mapToDouble(FleetBrowserTest::number)
                .sum();
        // Each is rounded to a tenth, the figure to a half.
        assertEquals(number(figure.innerText()), sum, 0.25 + 0.05 * pieces.count());
        assertEquals(0, number(figure.innerText()) % 0.5, 1e-9);
        assertThat(page.locator(".strip path.lit").first()).isVisible();

        String whole = page.locator(".window-shown").textContent();
        pieces.first().focus();
        page.keyboard().press("Enter");
        assertThat(pieces.first()).hasClass("pick chosen");
        assertThat(page.locator(".window-shown")).not().hasText(whole);
        Browser.keep(page, "fleet-pieces");
        page.getByText("Close").click();
        assertThat(page.locator(".pieces")).hasCount(0);
        assertThat(page.locator(".strip path.lit")).hasCount(0);
    }

    @Test
    void arrowKeysMoveWithinTheLedgerWhichShowsTheBoatsBesideEachOtherToo() {
        Page page = open("", 1440, 900);
        page.locator(".grid button").first().focus();
        page.keyboard().press("ArrowRight");
        assertThat(page.locator(".grid button[data-at='0,1']")).isFocused();
        page.keyboard().press("ArrowDown");
        assertThat(page.locator(".grid button[data-at='1,1']")).isFocused();

        page.getByText("By boat").click();
        assertThat(page.locator(".grid thead th")).hasText(new String[] {"Cause", "A", "C", "D"});
        // However wide the table was before, one figure is reached by Tab.
        assertThat(page.locator(".grid button[tabindex='0']")).hasCount(1);
        page.locator(".grid button[data-at='0,2']").click();
        assertThat(page.locator(".boat.focus")).containsText("Dunlin");
        assertThat(page.locator(".pieces h3")).containsText("all legs");
    }

    @Test
    void turnsSayWhatForcedThem() {
        Page page = open("", 1440, 900);
        page.locator("#tab-turns").click();
        assertThat(page.locator(".findings tbody")).containsText("free");
        assertThat(page.locator(".findings tbody")).containsText("mark");
    }

    @Test
    void startsAreLaidOverOneAnother() {
        Page page = open("", 1440, 900);
        page.locator("#tab-start").click();
        Locator rows = page.locator("#tab-panel tbody tr");
        assertThat(rows.first()).isVisible();
        rows.first().hover();
        assertThat(page.locator("svg.overlay").first().locator("polyline.lit").first())
                .isVisible();
        String whole = page.locator(".window-shown").textContent();
        rows.first().click();
        assertThat(page.locator(".window-shown")).not().hasText(whole);
    }

    @Test
    void turnsAreLaidOverOneAnother() {
        Page page = open("", 1440, 900);
        page.locator("#tab-turns").click();
        page.locator("button[name=overlay]").click();
        page.locator("select[name=whose]").selectOption("all");
        Locator rows = page.locator("#tab-panel tbody tr");
        assertThat(rows.first()).isVisible();
        int turns = rows.count();
        assertThat(page.locator("svg.overlay").first().locator("polyline")).hasCount(turns);
        rows.first().hover();
        assertThat(page.locator("svg.overlay").first().locator("polyline.lit")).hasCount(1);
        String whole = page.locator(".window-shown").textContent();
        rows.first().click();
        assertThat(page.locator(".window-shown")).not().hasText(whole);
        Browser.keep(page, "turns-laid-over");
    }

    @Test
    void turnsStandBesideTheKeptPlanOfTheirKindAndWind() {
        Page page = open("", 1440, 900);
        page.locator("#tab-turns").click();
        page.locator("button[name=overlay]").click();
        page.locator("select[name=kind]").selectOption("tack");
        Locator planned = page.locator(".planned li");
        assertThat(planned.first()).containsText("full plan for 15 kn, on the foils");
        assertThat(planned.first()).containsText("camber against its cue");
        assertThat(planned.first()).containsText("boards: cannot tell");
        page.locator("select[name=kind]").selectOption("gybe");
        assertThat(page.locator(".planned li")).hasCount(0);
        Browser.keep(page, "turns-beside-plans");
    }

    /** Of a tack; its figures are invented. */
    private static ObjectNode plan() {
        ObjectNode document = JsonOut.document("turn-plan/1");
        document.put("boat", "any").put("wing", "any").put("kind", "tack").put("begin", "foils");
        document.put("tws_kn", 15);
        ObjectNode plan = document.putObject("full");
        for (String key : List.of(
                "lead_s",
                "ease_deg",
                "over_awa_deg",
                "across_sheet_deg",
                "on_angle_deg",
                "power_deg",
                "rate_deg_per_s",
                "exit_deg",
                "build_ratio",
                "board_ratio",
                "height_more_m",
                "moment_ratio")) {
            plan.put(key, 1);
        }
        return document;
    }

    @Test
    void aPhoneShowsItInOneColumn() {
        Page page = open("", 390, 844);
        assertThat(page.locator(".strip")).hasCount(2);
        assertEquals(390, ((Number) page.evaluate("document.documentElement.scrollWidth")).intValue());
        BoundingBox strips = page.locator(".strips").boundingBox();
        BoundingBox track = page.locator(".track").boundingBox();
        assertTrue(track.y >= strips.y + strips.height, "the track lies upon the strips");
        // A click needs a page that stands still.
        page.locator(".grid button[data-at='0,1']").click();
        assertThat(page.locator(".pieces")).isVisible();
        Browser.keep(page, "fleet-phone");
    }

    private Page open(String choice, int width, int height) {
        Page page = browser.page(width, height);
        page.navigate(workbench.address() + "debrief/" + session.id() + choice);
        assertThat(page.locator(".strip").first()).isVisible();
        assertThat(page.locator(".findings")).isVisible();
        return page;
    }

    /** A number as pages write it. */
    private static double number(String shown) {
        return Double.parseDouble(shown.strip().replace('\u2212', '-'));
    }
}
