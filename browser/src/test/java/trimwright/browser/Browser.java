package trimwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.LoadState;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.opentest4j.TestAbortedException;

/** A Chromium of the machine, without a window; keeps what pages complain about. */
final class Browser implements AutoCloseable {
    private static final List<String> NAMES = List.of("chromium", "chromium-browser", "google-chrome");
    private static final List<String> FLAGS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private final Playwright playwright;
    private final com.microsoft.playwright.Browser chromium;
    private final List<String> complaints = new ArrayList<>();

    Browser() {
        // Tests may share the machine with others.
        PlaywrightAssertions.setDefaultAssertionTimeout(20_000);
        Path program = findChromium();
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        chromium = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(program)
                        .setArgs(FLAGS));
    }

    private static Path findChromium() {
        for (String folder : String.valueOf(System.getenv("PATH")).split(File.pathSeparator)) {
            for (String name : NAMES) {
                Path program = Path.of(folder, name);
                if (Files.isExecutable(program)) {
                    return program;
                }
            }
        }
        throw new TestAbortedException("no Chromium on this machine (Debian: apt install chromium)");
    }

    /** A new page of that size; whatever it writes to the console as an error, or fails to load, is kept. */
    Page page(int width, int height) {
        BrowserContext context = chromium.newContext(
                new com.microsoft.playwright.Browser.NewContextOptions().setViewportSize(width, height));
        Page page = context.newPage();
        page.setDefaultTimeout(20_000);
        page.onConsoleMessage(message -> {
            if (message.type().equals("error") || message.type().equals("warning")) {
                complaints.add(message.text() + " at " + message.location());
            }
        });
        page.onPageError(complaints::add);
        page.onRequestFailed(request -> {
            // A chart that is drawn anew takes back what it asked for before.
            if (!"net::ERR_ABORTED".equals(request.failure())) {
                complaints.add(request.url() + ": " + request.failure());
            }
        });
        return page;
    }

    /** Fails if any page so far had something to complain about. */
    void expectNoComplaint() {
        assertEquals(List.of(), complaints);
    }

    /** Keeps a picture of the page in {@code target/screens}. */
    static void keep(Page page, String name) {
        page.waitForLoadState(LoadState.NETWORKIDLE);
        // For the picture only: charts draw a moment after their numbers came.
        page.waitForTimeout(400);
        Path target = Path.of(System.getProperty("trimwright.target", "target"));
        page.screenshot(
                new Page.ScreenshotOptions().setPath(target.resolve("screens").resolve(name + ".png")));
    }

    @Override
    public void close() {
        chromium.close();
        playwright.close();
    }
}
