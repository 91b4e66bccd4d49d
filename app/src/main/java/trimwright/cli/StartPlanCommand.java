package trimwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.drills.DrillBoats;
import trimwright.drills.StartPlanDocument;
import trimwright.drills.StartPlanRun;
import trimwright.drills.StartPlanText;
import trimwright.prepare.TargetBooks;
import trimwright.start.StartPlan;
import trimwright.start.StartSetup;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.units.Units;

/** Says what to know before a start: seconds to the line, how slowly she can be held, how seconds are lost. */
@Command(name = "start-plan")
public final class StartPlanCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final DrillOptions drills = new DrillOptions();

    @Option(names = "--twa", paramLabel = "DEG", defaultValue = "100", descriptionKey = "startplan.twa")
    private double twa;

    @Mixin
    private final TurbulenceOption turbulence = new TurbulenceOption();

    @Option(
            names = "--boats",
            paramLabel = "N",
            defaultValue = "" + StartPlanRun.BOATS,
            descriptionKey = "startplan.boats")
    private int boats;

    private final Console console;
    private final TargetBooks books;

    public StartPlanCommand(Console console, TargetBooks books) {
        this.console = console;
        this.books = books;
    }

    @Override
    public Integer call() throws InterruptedException {
        drills.check();
        NumberCheck.within("--twa", twa, StartPlanRun.LEAST_ANGLE_DEG, StartPlanRun.MOST_ANGLE_DEG);
        double gusty = turbulence.ratio();
        NumberCheck.within("--boats", boats, 4, 400);
        BoatFile file = drills.file();
        WingSpec spec = drills.wing(file);
        StartSetup setup = DrillBoats.start(
                file, spec, drills.book(file, books, console), drills.wind(), gusty, Units.fromDegrees(twa));
        StartPlan plan;
        try (Progress progress = console.progress(Texts.of("startplan.progress"), StartPlanRun.steps(boats), "")) {
            plan = StartPlanRun.of(setup, boats, progress);
        }
        if (common.json()) {
            console.json(StartPlanDocument.of(file, plan, boats));
        } else {
            console.text(StartPlanText.of(plan, boats));
        }
        return CommandRunner.DONE;
    }
}
