package trimwright.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.FilePayload;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.web.Services;
import trimwright.web.Workbench;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DebriefBrowserTest {
    private Browser browser;
    private Library library;
    private Workbench workbench;
    private SessionInfo session;

    @BeforeAll
    void start(@TempDir Path folder) {
        browser = new Browser();
        session = InventedSession.write(folder);
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
    void theLibraryListsTheSessionAndOpensIt() {
        Page page = browser.page(1280, 800);
        page.navigate(workbench.address() + "library");
        Locator link = page.locator("table.sessions a[href^='/debrief/']");
        assertThat(link).hasText(session.id());
        assertThat(page.locator("table.sessions tbody")).containsText("Avocet, Dunlin");
        assertThat(page.locator("table.sessions tbody")).containsText("10:00:00");
        // 35 degrees west: two hours behind UTC.
        assertThat(page.locator("table.sessions tbody")).containsText("12:13:20 UTC\u22122");
        assertThat(page.locator("table.sessions tbody")).containsText("14:13:20 UTC");
        Browser.keep(page, "library");
        link.click();
        assertThat(page.locator("h1")).hasText(session.id());
        assertThat(page.locator(".lane-box")).hasCount(2);
        page.goBack();
        assertThat(page.locator("table.sessions a[href^='/debrief/']")).hasText(session.id());
    }

    @Test
    void theWholeDayIsZoomedAndMovedByWheelDragKeysAndDoubleClick() {
        Page page = open(1280, 800);
        Locator shown = page.locator(".window-shown");
        String whole = shown.textContent();
        assertTrue(whole.contains("(10:00:00)"), whole);
        BoundingBox stack = page.locator(".lane-stack").boundingBox();
        double x = stack.x + stack.width / 2;
        double y = stack.y + 60;
        page.mouse().move(x, y);
        for (int i = 0; i < 8; i++) {
            page.mouse().wheel(0, -400);
        }
        assertThat(shown).not().hasText(whole);
        String zoomed = shown.textContent();
        Browser.keep(page, "debrief-zoomed");

        page.mouse().down();
        page.mouse().move(x - 200, y);
        page.mouse().up();
        assertThat(shown).not().hasText(zoomed);
        String moved = shown.textContent();
        assertEquals(lengthOf(zoomed), lengthOf(moved));

        page.locator(".lane-stack").focus();
        page.keyboard().press("ArrowRight");
        assertThat(shown).not().hasText(moved);
        page.keyboard().press("ArrowUp");
        assertNotEquals(lengthOf(moved), lengthOf(shown.textContent()));
        page.mouse().dblclick(x, y);
        assertThat(shown).hasText(whole);
    }

    @Test
    void oneCursorReadsEveryLane() {
        Page page = open(1280, 800);
        Locator value = page.locator(".lane-box[data-lane=speed] .entry b");
        assertThat(value).hasText("\u2013");
        BoundingBox stack = page.locator(".lane-stack").boundingBox();
        page.mouse().move(stack.x + stack.width * 0.6, stack.y + 100);
        assertThat(page.locator(".cursor")).isVisible();
        assertThat(value).hasText(java.util.regex.Pattern.compile("\\d+\\.\\d"));
        assertThat(page.locator(".lane-box[data-lane=direction] .entry b"))
                .hasText(java.util.regex.Pattern.compile("\\d{3}\u00b0"));
        page.locator(".lane-stack").focus();
        String before = page.locator(".cursor").textContent();
        page.keyboard().press(".");
        assertThat(page.locator(".cursor")).not().hasText(before);
        Browser.keep(page, "debrief-cursor");
    }

    @Test
    void anotherBoatOfTheSessionCanBePicked() {
        Page page = open(834, 1112);
        page.locator(".boat label").getByText("Dunlin").click();
        assertThat(page.locator(".boat.focus")).containsText("Dunlin");
        assertTrue(page.url().endsWith("?of=Dunlin"), page.url());
        assertThat(page.locator(".lane-box")).hasCount(2);
        Browser.keep(page, "debrief-tablet");
    }

    @Test
    void samplesThatAreLeftOutStandInTheLaneAsShapeAndWordAndAreCounted() {
        Page page = open(1280, 800);
        Locator head = page.locator(".lane-box[data-lane=speed] .lane-head");
        assertThat(head.locator(".left-out")).hasText(new String[] {"SOG: frozen", "SOG: jump"});
        assertThat(head.locator(".left-out polygon")).hasCount(2);
        assertThat(page.locator(".lane-box[data-lane=direction] .left-out")).hasCount(0);
        Browser.keep(page, "debrief-left-out");
        page.locator("#tab-data").click();
        assertThat(page.locator(".findings tbody tr").filter(new Locator.FilterOptions().setHasText("SOG")))
                .containsText(java.util.regex.Pattern.compile("3,000\\s+frozen\\s*1\\s+jump"));
        page.locator(".lane-stack").focus();
        for (int i = 0; i < 6; i++) {
            page.keyboard().press("ArrowUp");
        }
        // The window is now in the middle of the day, where nothing was left out.
        assertThat(head.locator(".left-out")).hasCount(0);
    }

    @Test
    void timesAreThoseOnBoardAndUtcIsOneClickAway() {
        Page page = open(1280, 800);
        Locator shown = page.locator(".window-shown");
        assertThat(shown).hasText("12:13:20 \u2013 22:13:19 UTC\u22122 (10:00:00)");
        page.locator("button[aria-pressed]").getByText("UTC").click();
        assertThat(shown).hasText("14:13:20 \u2013 00:13:19 UTC (10:00:00)");
        assertThat(page.locator(".time-axis")).containsText("20:00");
        page.reload();
        assertThat(shown).hasText("14:13:20 \u2013 00:13:19 UTC (10:00:00)");
    }

    @Test
    void aStretchIsMarkedShownAgainAndDropped() {
        Page page = open(1280, 800);
        page.locator("#tab-moments").click();
        page.keyboard().press("0");
        page.locator(".moment input[name=note]").fill("a long day");
        // Ten hours are no moment.
        assertThat(page.locator(".moment button")).isDisabled();
        Locator row = page.locator("#tab-panel tbody tr");
        BoundingBox stack = page.locator(".lane-stack").boundingBox();
        page.mouse().move(stack.x + stack.width / 2, stack.y + 60);
        for (int i = 0; i < 20; i++) {
            page.mouse().wheel(0, -240);
        }
        String shown = page.locator(".moment p").textContent();
        page.locator(".moment button").click();
        assertThat(row).hasCount(1);
        assertThat(row).containsText("a long day");
        page.keyboard().press("0");
        row.click();
        assertThat(page.locator(".moment p")).hasText(shown);
        Browser.keep(page, "moments");
        row.locator("button").click();
        assertThat(row).hasCount(0);
    }

    @Test
    void aRecordingOfTheCrewGoesWithTheChartsAndStaysOnThisMachine() {
        Page page = open(1280, 800);
        List<String> sent = new ArrayList<>();
        page.onRequest(request -> {
            if (request.method().equals("POST") || request.method().equals("PUT")) {
                sent.add(request.url());
            }
        });
        page.locator("#tab-moments").click();
        page.locator(".film summary").click();
        page.locator(".film input[type=file]").setInputFiles(new FilePayload("talk.wav", "audio/wav", silence(30)));
        Locator begins = page.locator(".film p").last();
        assertThat(begins).containsText("(0 s into the session)");
        // Second 5 of the recording is the middle of the ten hours that the charts show.
        page.locator(".film video").evaluate("film => { film.currentTime = 5; }");
        page.locator(".film button").getByText("middle of the charts").click();
        assertThat(begins).containsText("(17994.9 s into the session)");
        page.locator(".film button").getByText("+1 s").click();
        assertThat(begins).containsText("(17995.9 s into the session)");
        // The browser knows it again.
        page.locator(".film input[type=file]").setInputFiles(new FilePayload("talk.wav", "audio/wav", silence(30)));
        assertThat(begins).containsText("(17995.9 s into the session)");
        assertEquals(List.of(), sent);
    }

    /** Seconds of silence, 8,000 bytes each. */
    private static byte[] silence(int seconds) {
        int rate = 8000;
        int length = seconds * rate;
        ByteBuffer bytes = ByteBuffer.allocate(44 + length).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put("RIFF".getBytes(StandardCharsets.US_ASCII)).putInt(36 + length);
        bytes.put("WAVEfmt ".getBytes(StandardCharsets.US_ASCII)).putInt(16);
        bytes.putShort((short) 1).putShort((short) 1).putInt(rate).putInt(rate);
        bytes.putShort((short) 1).putShort((short) 8);
        bytes.put("data".getBytes(StandardCharsets.US_ASCII)).putInt(length);
        while (bytes.hasRemaining()) {
            bytes.put((byte) 128);
        }
        return bytes.array();
    }

    private Page open(int width, int height) {
        Page page = browser.page(width, height);
        page.navigate(workbench.address() + "debrief/" + session.id());
        assertThat(page.locator(".lane-box canvas").first()).isVisible();
        return page;
    }

    /** The length of the window at the end of the readout, in brackets. */
    private static String lengthOf(String readout) {
        return readout.substring(readout.indexOf('('));
    }
}
