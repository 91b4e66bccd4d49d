package trimwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;

/** A part of a page that is made from code. With {@code -Dtrimwright.approve=true} the page is rewritten, else compared. */
final class GeneratedBlock {
    private GeneratedBlock() {}

    static void check(String page, String name, String content) {
        Path file = ProjectFiles.ROOT.resolve(page);
        String text = ProjectFiles.read(file);
        String begin = "<!-- begin generated: " + name + " -->\n";
        int from = text.indexOf(begin);
        int to = text.indexOf("<!-- end generated -->", from);
        assertTrue(from >= 0 && to > from, page + " has no block " + name);
        String wanted = "\n" + content.stripTrailing() + "\n\n";
        if (Boolean.getBoolean("trimwright.approve")) {
            ProjectFiles.write(file, text.substring(0, from) + begin + wanted + text.substring(to));
            return;
        }
        assertEquals(
                wanted,
                text.substring(from + begin.length(), to),
                page + " is behind the code; CONTRIBUTING.md says how it is rewritten");
    }
}
