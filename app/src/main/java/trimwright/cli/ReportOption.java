package trimwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** The report of a day as one HTML file. */
public final class ReportOption {
    @Option(names = "--html", paramLabel = "FILE", descriptionKey = "report.option")
    private @Nullable Path html;

    boolean isAsked() {
        return html != null;
    }

    /** Writes the page; returns what to tell about it. */
    String write(String page) {
        if (html == null) {
            throw new IllegalStateException("no report was asked for");
        }
        try {
            Files.writeString(html, page);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("report.cannot_write", html), e);
        }
        return Texts.of("report.written", html);
    }
}
