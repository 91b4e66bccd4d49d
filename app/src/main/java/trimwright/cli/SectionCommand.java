package trimwright.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.SectionDocument;
import trimwright.text.Texts;
import trimwright.units.Units;

/** Computes one section of a wing in two dimensions. */
@Command(name = "section")
public final class SectionCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final BoatOption boat = new BoatOption();

    @Mixin
    private final WingOption wing = new WingOption();

    @Option(names = "--station", paramLabel = "RATIO", defaultValue = "0.5", descriptionKey = "section.station")
    private double station;

    @Option(names = "--alpha", paramLabel = "DEG", required = true, descriptionKey = "section.alpha")
    private double alphaDeg;

    @Option(names = "--camber", paramLabel = "DEG", required = true, descriptionKey = "section.camber")
    private double camberDeg;

    @Option(names = "--reynolds", paramLabel = "NUMBER", defaultValue = "2e6", descriptionKey = "section.reynolds")
    private double reynolds;

    private final Console console;

    public SectionCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        BoatFile file = boat.load();
        WingSpec spec = wing.of(file.boat());
        ObjectNode document = SectionDocument.of(
                file,
                spec,
                NumberCheck.within("--station", station, 0, 1),
                Units.fromDegrees(NumberCheck.within("--alpha", alphaDeg, -180, 180)),
                Units.fromDegrees(NumberCheck.within("--camber", camberDeg, -60, 60)),
                NumberCheck.within("--reynolds", reynolds, 1e4, 1e8));
        if (common.json()) {
            console.json(document);
            return CommandRunner.DONE;
        }
        console.line(
                "%s, wing %s, %.2f m above the foot: chord %.2f m, alpha %.1f deg, flap %.1f deg, Re %.2e",
                document.path("boat").asText(),
                spec.id(),
                document.path("height_above_foot_m").asDouble(),
                document.path("chord_m").asDouble(),
                alphaDeg,
                camberDeg,
                reynolds);
        for (String key : new String[] {
            "lift_coefficient", "drag_coefficient", "lift_over_drag_ratio", "moment_coefficient", "stall_margin_deg"
        }) {
            console.line(
                    "%-28s %10.4f",
                    Texts.of("section." + key), document.path(key).asDouble());
        }
        return CommandRunner.DONE;
    }
}
