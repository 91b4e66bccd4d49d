package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.lang.management.ManagementFactory;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.store.Library;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** A wing that is moved by hand: its numbers are the command's, and they are there at once. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ExploreBrowserTest {
    private static final int PRESSES = 200;

    /** States whose pressures are compared too: each takes a second or two. */
    private static final int WITH_PRESSURE = 2;

    /** Three flows with boundary layers, on a busy machine. */
    private static final double PRESSURE_MILLIS = 120_000;

    /** Names in the address and options of the command, with the ends of what is drawn at random. */
    private static final List<Drawn> TRUE_WIND = List.of(
            new Drawn("tws", "--tws", 6, 25),
            new Drawn("twa", "--twa", 35, 165),
            new Drawn("speed", "--boat-speed", 8, 40));

    private static final List<Drawn> APPARENT_WIND =
            List.of(new Drawn("aws", "--aws", 10, 50), new Drawn("awa", "--awa", 5, 60));
    private static final List<Drawn> TRIM = List.of(
            new Drawn("camber", "--camber", 0, 38),
            new Drawn("twist", "--twist", 0, 40),
            new Drawn("sheet", "--sheet", 0, 40));

    private record Drawn(String name, String option, double low, double high) {}

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

    @AfterEach
    void thePageHadNothingToComplainAbout() {
        browser.expectNoComplaint();
    }

    @Test
    void eachNumberIsTheCommandsOnTwentyRandomStates() {
        Page page = open("", 1440, 900);
        List<Map<String, String>> first = new ArrayList<>();
        int solved = numbersAreTheCommands(page, arguments -> Command.answer(SharedBooks.get(), arguments), options -> {
            if (first.size() < WITH_PRESSURE) {
                first.add(options);
                comparePressures(page, options);
            }
        });
        assertTrue(solved >= 15, "states with a flow: " + solved);
    }

    /**
     * Twenty random states, each set on the page and asked of the command.
     *
     * @param command its document for arguments, null where there is no flow
     * @param then done at each state, with the command's options
     * @return how many states have a flow
     */
    static int numbersAreTheCommands(
            Page page, Function<String[], @Nullable JsonNode> command, Consumer<Map<String, String>> then) {
        Random random = new Random(20);
        int solved = 0;
        for (int i = 0; i < 20; i++) {
            boolean isTrue = i % 2 == 0;
            page.getByText(isTrue ? "True wind" : "Apparent wind", new Page.GetByTextOptions().setExact(true))
                    .click();
            Map<String, String> options = new LinkedHashMap<>();
            List<Drawn> all = new ArrayList<>(isTrue ? TRUE_WIND : APPARENT_WIND);
            all.addAll(TRIM);
            for (Drawn one : all) {
                String value =
                        String.format(Locale.ROOT, "%.1f", one.low() + random.nextDouble() * (one.high() - one.low()));
                options.put(one.option(), value);
                Locator field = control(page, one.name()).locator("input[type=text]");
                field.fill(value);
                field.press("Enter");
            }
            // As the page has them from the start.
            options.put("--heel", "2");
            options.put("--ride-height", "1");
            if (isTrue) {
                options.put("--leeway", "3");
            }
            settled(page);
            solved += compare(page, options, command);
            then.accept(options);
        }
        return solved;
    }

    /** Compares all numbers on the page; 1 where there are some, 0 where page and command find no flow. */
    private static int compare(Page page, Map<String, String> options, Function<String[], @Nullable JsonNode> command) {
        List<String> arguments = new ArrayList<>(List.of("wing", "--boat", "whimbrel14", "--wing", "tall", "--json"));
        options.forEach((option, value) -> arguments.addAll(List.of(option, value)));
        JsonNode document = command.apply(arguments.toArray(String[]::new));
        if (document == null) {
            assertThat(page.locator(".words .bad")).containsText("No flow was found");
            return 0;
        }
        List<?> numbers = (List<?>) page.evaluate("[...document.querySelectorAll('[data-path]')]"
                + ".map((one) => [one.dataset.path, one.dataset.over, one.dataset.decimals, one.textContent])");
        assertTrue(numbers.size() > 40, "numbers on the page: " + numbers.size());
        for (Object number : numbers) {
            List<?> parts = (List<?>) number;
            String path = (String) parts.get(0);
            JsonNode value = document.at("/" + path.replace('.', '/'));
            assertTrue(value.isNumber(), path);
            double shown = value.asDouble() / Double.parseDouble((String) parts.get(1));
            int decimals = Integer.parseInt((String) parts.get(2));
            String text = ((String) parts.get(3)).replace('\u2212', '-').replace("+", "");
            assertEquals(
                    0,
                    new BigDecimal(shown)
                            .setScale(decimals, RoundingMode.HALF_UP)
                            .compareTo(new BigDecimal(text)),
                    () -> path + " is " + value + " at " + options + ", the page says " + text);
        }
        return 1;
    }

    /** Lift of the computed flow about the three sections, once it is there. */
    private static void comparePressures(Page page, Map<String, String> options) {
        page.locator(".pressure-panel").scrollIntoViewIfNeeded();
        page.locator(".pressure-panel[data-shown=now]")
                .waitFor(new Locator.WaitForOptions().setTimeout(PRESSURE_MILLIS));
        List<String> arguments =
                new ArrayList<>(List.of("wing", "--boat", "whimbrel14", "--wing", "tall", "--json", "--pressure"));
        options.forEach((option, value) -> arguments.addAll(List.of(option, value)));
        JsonNode document = Command.answer(SharedBooks.get(), arguments.toArray(String[]::new));
        List<?> numbers = (List<?>) page.evaluate("[...document.querySelectorAll('[data-pressure]')]"
                + ".map((one) => [one.dataset.pressure, one.dataset.decimals, one.textContent])");
        if (document == null) {
            assertTrue(numbers.isEmpty(), () -> "pressures without a flow at " + options);
            return;
        }
        assertTrue(!numbers.isEmpty(), () -> "no pressures at " + options);
        for (Object number : numbers) {
            List<?> parts = (List<?>) number;
            JsonNode value = document.path("pressures").at("/" + ((String) parts.get(0)).replace('.', '/'));
            assertEquals(
                    0,
                    new BigDecimal(value.asDouble())
                            .setScale(Integer.parseInt((String) parts.get(1)), RoundingMode.HALF_UP)
                            .compareTo(new BigDecimal(((String) parts.get(2)).replace('\u2212', '-'))),
                    () -> parts + " is " + value + " at " + options);
        }
    }

    @Test
    void eachPressOfAKeyIsAnsweredByAPictureAndTimed() {
        Page page = open("", 1440, 900);
        page.evaluate("""
                () => {
                  const grid = document.querySelector('.explore-grid');
                  const after = new MessageChannel();
                  let start = null;
                  let shown = null;
                  after.port1.onmessage = ({ data }) => {
                    window.pictureTimes.push(performance.now() - data);
                    shown();
                  };
                  document.addEventListener('keydown', (event) => {
                    window.picture = new Promise((done) => { shown = done; });
                    start = event.timeStamp;
                  }, true);
                  new MutationObserver(() => {
                    if (start === null || grid.dataset.shown !== 'now') return;
                    const from = start;
                    start = null;
                    // A frame's callbacks run before it is painted, a message sent in them arrives after.
                    requestAnimationFrame(() => after.port2.postMessage(from));
                  }).observe(grid, { attributes: true, attributeFilter: ['data-answers'] });
                }""");
        slider(page, "sheet").focus();
        pressed(page, 60);
        double[] millis = pressed(page, PRESSES);
        System.out.printf(
                Locale.ROOT,
                "slider to picture: median %.1f ms, 99th percentile %.1f ms of %d key presses, load %.1f%n",
                millis[PRESSES / 2],
                millis[(int) Math.ceil(0.99 * PRESSES) - 1],
                PRESSES,
                load());
        assertEquals(PRESSES, millis.length);
        assertTrue(millis[0] > 0, millis[0] + " ms");
    }

    /** Programs that want to run, a processor. */
    private static double load() {
        return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage()
                / Runtime.getRuntime().availableProcessors();
    }

    /** Presses arrows to and fro, each after the picture of the one before; sorted times (ms). */
    private static double[] pressed(Page page, int times) {
        page.evaluate("window.pictureTimes = []");
        for (int i = 1; i <= times; i++) {
            page.keyboard().press(i / 10 % 2 == 0 ? "ArrowRight" : "ArrowLeft");
            page.evaluate("window.picture");
        }
        return ((List<?>) page.evaluate("window.pictureTimes"))
                .stream()
                        .mapToDouble(millis -> ((Number) millis).doubleValue())
                        .sorted()
                        .toArray();
    }

    @Test
    void aStateIsKeptInTheAddressAndUndone() {
        Page page = open("?camber=12&twist=6&sheet=9", 1440, 900);
        String drive = number(page, "drive_force_n");
        slider(page, "camber").focus();
        for (int i = 0; i < 6; i++) {
            page.keyboard().press("ArrowRight");
        }
        assertThat(page).hasURL(Pattern.compile("camber=15&"));
        settled(page);
        String more = number(page, "drive_force_n");
        assertNotEquals(drive, more);
        page.reload();
        settled(page);
        assertEquals(more, number(page, "drive_force_n"));

        slider(page, "sheet").focus();
        page.keyboard().press("PageUp");
        assertThat(page).hasURL(Pattern.compile("sheet=11.5"));
        page.keyboard().press("Control+z");
        assertThat(page).hasURL(Pattern.compile("sheet=9&|sheet=9$"));
        settled(page);
        assertEquals(more, number(page, "drive_force_n"));
        page.keyboard().press("Control+y");
        assertThat(page).hasURL(Pattern.compile("sheet=11.5"));
        assertThat(page.locator(".trace-panel .rest")).not().hasCount(0);
    }

    @Test
    void theWheelMovesTheChosenControlAndTheMainElementIsDragged() {
        Page page = open("", 1440, 900);
        Locator sheet = control(page, "sheet").locator("input[type=text]");
        slider(page, "sheet").focus();
        BoundingBox box = slider(page, "sheet").boundingBox();
        page.mouse().move(box.x + 10, box.y + 10);
        page.mouse().wheel(0, -100);
        assertThat(sheet).hasValue("8.5");
        settled(page);
        BoundingBox main = page.locator(".station.foot .main").boundingBox();
        page.mouse().move(main.x + main.width * 0.4, main.y + main.height * 0.8);
        page.mouse().down();
        page.mouse().move(main.x + main.width * 0.4 - 30, main.y + main.height * 0.8);
        page.mouse().up();
        assertTrue(Double.parseDouble(sheet.inputValue()) > 12, "easing by dragging: " + sheet.inputValue());
    }

    @Test
    void stallSlackSheetAndLimitsAreSaidInWords() {
        Page page = open("?wind=apparent&aws=30&awa=45&camber=30&twist=0&sheet=0", 1440, 900);
        assertThat(page.locator(".words")).containsText("Stalled");
        assertThat(page.locator(".stall-dot").first()).isVisible();
        Browser.keep(page, "explore-stalled");
        page = open("?wind=apparent&aws=30&awa=18&camber=0&twist=0&sheet=25", 1440, 900);
        assertThat(page.locator(".words")).containsText("slack");
        page = open("?wind=apparent&aws=60&awa=25&camber=25&twist=0&sheet=8", 1440, 900);
        assertThat(page.locator(".words")).containsText("above the limit of the boat file");
        page = open("?camber=99&twist=30", 1440, 900);
        assertThat(control(page, "camber").locator("input[type=text]")).hasValue("38.0");
        page = open("?camber=5&twist=30", 1440, 900);
        assertThat(page.locator(".words")).containsText("further over than the boat file allows");
    }

    @Test
    void aKeptStateIsShownWithTheNextOnes() {
        Page page = open("?camber=12&twist=6&sheet=9", 1440, 900);
        String drive = number(page, "drive_force_n");
        page.locator(".keep").click();
        slider(page, "twist").focus();
        page.keyboard().press("PageUp");
        assertThat(control(page, "twist").locator("input[type=text]")).hasValue("8.5");
        settled(page);
        assertNotEquals(drive, number(page, "drive_force_n"));
        assertThat(page.locator(".explore-figures .was").first()).hasText("was " + drive);
        assertThat(page.locator(".span-lane .before")).hasCount(3);
        assertThat(page.locator(".station .before")).hasCount(3);
        Browser.keep(page, "explore-compared");
        page.locator(".kept").click();
        assertThat(page.locator(".before")).hasCount(0);
    }

    @Test
    void itReadsOnATelephone() {
        Page page = open("", 390, 844);
        assertTrue((boolean) page.evaluate("document.documentElement.scrollWidth <= window.innerWidth"));
        Browser.keep(page, "explore-telephone");
        page.locator(".changes").scrollIntoViewIfNeeded();
        assertThat(page.locator(".sections svg").first()).isInViewport();
        Page wide = open("", 1440, 900);
        control(wide, "camber").locator(".term").focus();
        assertThat(wide.locator("#tip-camber")).isVisible();
        Browser.keep(wide, "explore");
    }

    private static Locator control(Page page, String name) {
        return page.locator("[data-control=" + name + "]");
    }

    private static Locator slider(Page page, String name) {
        return control(page, name).locator("input[type=range]");
    }

    private static String number(Page page, String path) {
        return page.locator(".explore-figures [data-path=" + path + "]").textContent();
    }

    /** Waits until the picture is that of the state that is set. */
    static void settled(Page page) {
        assertThat(page.locator(".explore-grid[data-shown=now]")).isVisible();
    }

    private Page open(String choice, int width, int height) {
        Page page = browser.page(width, height);
        page.navigate(workbench.address() + "explore" + choice + (choice.isEmpty() ? "?" : "&")
                + "boat=whimbrel14&wing=tall");
        settled(page);
        return page;
    }
}
