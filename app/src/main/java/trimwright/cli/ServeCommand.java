package trimwright.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.prepare.TargetBooks;
import trimwright.store.Library;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.web.Services;
import trimwright.web.Workbench;

/** Serves the pages of the workbench until it is interrupted. */
@Command(name = "serve")
public final class ServeCommand implements Callable<Integer> {
    /** Chosen: the four letters of trim on a telephone's keys. */
    private static final String PORT = "8746";

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Mixin
    private final SectionOption section = new SectionOption();

    @Option(names = "--port", paramLabel = "N", defaultValue = PORT, descriptionKey = "trimwright.serve.port")
    private int port;

    @Option(names = "--boat", paramLabel = "FILE", descriptionKey = "trimwright.serve.boat")
    private List<Path> boats = new ArrayList<>();

    @Option(names = "--open", descriptionKey = "trimwright.serve.open")
    private boolean open;

    private final Console console;
    private final Folders folders;
    private final TargetBooks books;

    public ServeCommand(Console console, Folders folders, TargetBooks books) {
        this.books = books;
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (port < 0 || port > 65535) {
            throw new UserInputException(Texts.of("serve.bad_port", port));
        }
        for (Path boat : boats) {
            if (!Files.isReadable(boat)) {
                throw new UserInputException(Texts.of("serve.no_file", boat));
            }
        }
        try (Library opened = Library.openOrCreate(library.folder(folders));
                Workbench workbench = Workbench.start(Services.of(opened, boats, books, section.source()), port)) {
            announce(workbench);
            if (open) {
                WebBrowser.show(workbench.address());
            }
            // Nothing counts it down: the signal that ends the process does.
            new CountDownLatch(1).await();
        }
        return CommandRunner.DONE;
    }

    private void announce(Workbench workbench) {
        if (common.json()) {
            console.json(JsonOut.document("serve/1").put("address", workbench.address()));
        } else {
            console.line(Texts.of("serve.at", workbench.address()));
            console.note(Texts.of("serve.stop"));
        }
    }
}
