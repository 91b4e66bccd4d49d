package trimwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.crew.WingHand;
import trimwright.drills.CuedDrill;
import trimwright.drills.DrillBoats;
import trimwright.drills.DrillDocument;
import trimwright.drills.DrillSea;
import trimwright.drills.Pilot;
import trimwright.plans.KeptPlan;
import trimwright.plans.KeptPlans;
import trimwright.practice.DrillResult;
import trimwright.practice.DrillRun;
import trimwright.practice.DrillSetup;
import trimwright.prepare.TargetBooks;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.weather.WaveSpec;

/** Sails a drill with a computed hand at the wing and says what it lost. */
@Command(name = "practice")
public final class PracticeCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final DrillOptions drills = new DrillOptions();

    @Option(names = "--drill", paramLabel = "NAME", required = true, descriptionKey = "practice.drill")
    private String drill;

    @Option(names = "--pilot", paramLabel = "NAME", defaultValue = "reference", descriptionKey = "practice.pilot")
    private String pilot;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1", descriptionKey = "practice.seed")
    private int seed;

    @Option(names = "--waves", paramLabel = "HEIGHT[,PERIOD]", defaultValue = "0", descriptionKey = "practice.waves")
    private String waves;

    @Option(names = "--turn-plan", paramLabel = "FILE", descriptionKey = "practice.turn_plan")
    private @Nullable Path plan;

    private final Console console;
    private final TargetBooks books;

    public PracticeCommand(Console console, TargetBooks books) {
        this.console = console;
        this.books = books;
    }

    @Override
    public Integer call() throws InterruptedException {
        drills.check();
        if (seed < 0) {
            throw new UserInputException(Texts.of("simulate.seed_range", seed));
        }
        BoatFile file = drills.file();
        WingSpec spec = drills.wing(file);
        WaveSpec sea = DrillSea.of(waves);
        Pilot hand = plan != null && pilot.equals(CuedDrill.PILOT) ? null : Pilot.of(pilot);
        KeptPlan kept = plan == null ? null : KeptPlans.read(plan);
        DrillSetup setup = DrillBoats.setup(
                        DrillBoats.drill(drill), file, spec, drills.book(file, books, console), drills.wind(), seed)
                .on(sea);
        if (kept != null) {
            return sail(file, new CuedDrill(setup, kept), setup, hand);
        }
        Pilot computed = Objects.requireNonNull(hand);
        DrillResult result = DrillRun.sail(setup, computed.hand(setup));
        if (common.json()) {
            console.json(DrillDocument.of(file, setup, computed.word(), result));
        } else {
            console.text(DrillDocument.text(setup, computed.word(), result));
        }
        return CommandRunner.DONE;
    }

    /** Along a plan's cues, by the plan's own hand where no other is named. */
    private int sail(BoatFile file, CuedDrill drill, DrillSetup setup, @Nullable Pilot other) {
        WingHand hand = other == null ? drill.hand() : other.hand(setup);
        DrillResult result = drill.sail(hand);
        if (common.json()) {
            ObjectNode document = DrillDocument.of(file, setup, pilot, result);
            drill.put(document);
            console.json(document);
        } else {
            console.text(DrillDocument.text(setup, pilot, result) + drill.text());
        }
        return CommandRunner.DONE;
    }
}
