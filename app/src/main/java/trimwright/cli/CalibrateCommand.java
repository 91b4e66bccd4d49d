package trimwright.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.calibration.Calibration;
import trimwright.sensors.CalibrationDocument;
import trimwright.sensors.CalibrationRequest;
import trimwright.sensors.CalibrationText;
import trimwright.store.Library;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;
import trimwright.text.NoAnswerException;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Solves for what a session's instruments read wrongly; accepts it, or takes that back. */
@Command(name = "calibrate")
public final class CalibrateCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final LibraryOption library = new LibraryOption();

    @Parameters(paramLabel = "SESSION", descriptionKey = "calibrate.session")
    private String session;

    @Option(names = "--boat", paramLabel = "BOAT", descriptionKey = "calibrate.boat")
    private @Nullable String boat;

    @Mixin
    private final WingOption wing = new WingOption();

    @Option(names = "--accept", descriptionKey = "calibrate.accept")
    private boolean accept;

    @Option(names = "--undo", descriptionKey = "calibrate.undo")
    private boolean undo;

    private final Console console;
    private final Folders folders;

    public CalibrateCommand(Console console, Folders folders) {
        this.console = console;
        this.folders = folders;
    }

    @Override
    public Integer call() {
        if (accept && undo) {
            throw new UserInputException(Texts.of("calibrate.one_of_two"));
        }
        try (Library shelf = Library.open(library.folder(folders))) {
            SessionInfo info = shelf.getSession(session);
            if (undo) {
                if (!shelf.calibrations(info).undo()) {
                    throw new UserInputException(Texts.of("calibrate.nothing", info.id()));
                }
                console.note(Texts.of("calibrate.undone", info.id()));
                return CommandRunner.DONE;
            }
            BoatFile file = boat == null ? null : BoatFiles.find(boat);
            WingSpec spec = file == null ? null : wing.of(file.boat());
            CalibrationRequest request =
                    new CalibrationRequest(info, file, spec, shelf.load(info), shelf.dockChecks(info));
            List<Calibration> answers = request.solve();
            String json = JsonOut.text(CalibrationDocument.of(request, answers));
            console.text(common.json() ? json : CalibrationText.of(request, answers));
            if (answers.stream().noneMatch(Calibration.Found.class::isInstance)) {
                throw new NoAnswerException(Texts.of("calibrate.none", info.id()));
            }
            if (accept) {
                shelf.calibrations(info).accept(json);
                console.note(Texts.of("calibrate.accepted", info.id()));
            }
        }
        return CommandRunner.DONE;
    }
}
