package trimwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.WingDocument;
import trimwright.prepare.WingState;
import trimwright.text.Texts;
import trimwright.units.Units;

/** Computes force, loads and stall of a wing as it is set. */
@Command(name = "wing")
public final class WingCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final BoatOption boat = new BoatOption();

    @Mixin
    private final WingOption wing = new WingOption();

    @Option(names = "--aws", paramLabel = "KN", required = true, descriptionKey = "wing.aws")
    private double awsKn;

    @Option(names = "--awa", paramLabel = "DEG", required = true, descriptionKey = "wing.awa")
    private double awaDeg;

    @Option(names = "--camber", paramLabel = "DEG", required = true, descriptionKey = "wing.camber")
    private double camberDeg;

    @Option(names = "--twist", paramLabel = "DEG", defaultValue = "0", descriptionKey = "wing.twist")
    private double twistDeg;

    @Option(names = "--twist-mid", paramLabel = "RATIO", defaultValue = "0.5", descriptionKey = "wing.twist_mid")
    private double twistMidRatio;

    @Option(names = "--sheet", paramLabel = "DEG", required = true, descriptionKey = "wing.sheet")
    private double sheetDeg;

    @Option(names = "--heel", paramLabel = "DEG", defaultValue = "0", descriptionKey = "wing.heel")
    private double heelDeg;

    @Option(names = "--ride-height", paramLabel = "M", defaultValue = "1", descriptionKey = "wing.ride_height")
    private double rideHeight;

    private final Console console;

    public WingCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        BoatFile file = boat.load();
        WingSpec spec = wing.of(file.boat());
        double camberMaxDeg = Units.toDegrees(spec.trim().camberMax());
        double twistMaxDeg = Units.toDegrees(spec.trim().twistMax());
        double sheetMaxDeg = Units.toDegrees(spec.trim().sheetMax());
        WingState state = new WingState(
                Units.fromKnots(NumberCheck.within("--aws", awsKn, 0, 120)),
                Units.fromDegrees(NumberCheck.within("--awa", awaDeg, -180, 180)),
                Units.fromDegrees(NumberCheck.within("--camber", camberDeg, -camberMaxDeg, camberMaxDeg)),
                Units.fromDegrees(NumberCheck.within("--twist", twistDeg, -twistMaxDeg, twistMaxDeg)),
                NumberCheck.within("--twist-mid", twistMidRatio, 0.2, 0.8),
                Units.fromDegrees(NumberCheck.within("--sheet", sheetDeg, -sheetMaxDeg, sheetMaxDeg)),
                Units.fromDegrees(NumberCheck.within("--heel", heelDeg, -30, 30)),
                NumberCheck.within("--ride-height", rideHeight, 0, 10));
        ObjectNode document = WingDocument.of(file, spec, state);
        if (common.json()) {
            console.json(document);
        } else {
            print(document);
        }
        return CommandRunner.DONE;
    }

    private void print(ObjectNode document) {
        console.line(
                "%s, wing %s: apparent wind %.1f kn at %.1f deg; camber %.1f, twist %.1f, sheet %.1f, heel %.1f deg",
                document.path("boat").asText(),
                document.path("wing").asText(),
                awsKn,
                awaDeg,
                camberDeg,
                twistDeg,
                sheetDeg,
                heelDeg);
        for (String key : new String[] {
            "drive_force_n",
            "side_force_n",
            "heeling_moment_nm",
            "sheet_load_n",
            "induced_drag_n",
            "profile_drag_n",
            "effort_height_above_foot_m",
            "stall_margin_deg",
            "stall_height_above_foot_m"
        }) {
            console.line(
                    "%-36s %12.1f", Texts.of("wing." + key), document.path(key).asDouble());
        }
        for (JsonNode limit : document.path("limits")) {
            console.line(Texts.of("wing.limit." + limit.asText()));
        }
        console.line(Texts.of("web.caution.short"));
    }
}
