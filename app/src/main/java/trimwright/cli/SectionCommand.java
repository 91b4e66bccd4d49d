package trimwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.prepare.FlowDocument;
import trimwright.prepare.FlowRequest;
import trimwright.prepare.FlowRow;
import trimwright.prepare.FlowRun;
import trimwright.prepare.SectionDocument;
import trimwright.prepare.SectionSource;
import trimwright.prepare.SectionTables;
import trimwright.profile.Contour;
import trimwright.text.NoAnswerException;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.units.Units;

/** Computes one section in two dimensions: of a boat's wing by the closed form, or any outline by panels and layers. */
@Command(name = "section")
public final class SectionCommand implements Callable<Integer> {
    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final WingOption wing = new WingOption();

    @Mixin
    private final SectionOption section = new SectionOption();

    @Option(names = "--boat", paramLabel = "BOAT", descriptionKey = "section.boat")
    private @Nullable String boat;

    @Option(names = "--profile", paramLabel = "NAME", descriptionKey = "section.profile")
    private @Nullable String profile;

    @Option(names = "--coordinates", paramLabel = "FILE", arity = "1..2", descriptionKey = "section.coordinates")
    private final List<Path> coordinates = new ArrayList<>();

    @Option(names = "--station", paramLabel = "RATIO", defaultValue = "0.5", descriptionKey = "section.station")
    private double station;

    @Option(names = "--alpha", paramLabel = "DEG", required = true, descriptionKey = "section.alpha")
    private String alpha = "";

    @Option(names = "--camber", paramLabel = "DEG", descriptionKey = "section.camber")
    private @Nullable Double camberDeg;

    @Option(names = "--reynolds", paramLabel = "NUMBER", defaultValue = "2e6", descriptionKey = "section.reynolds")
    private double reynolds;

    @Option(names = "--ncrit", paramLabel = "N", defaultValue = "9", descriptionKey = "section.ncrit")
    private double critical;

    @Option(names = "--inviscid", descriptionKey = "section.inviscid")
    private boolean inviscid;

    @Option(names = "--computed", descriptionKey = "section.computed")
    private boolean computed;

    @Option(names = "--csv", descriptionKey = "section.csv")
    private boolean csv;

    private final Console console;
    private final SectionTables tables;

    public SectionCommand(Console console, SectionTables tables) {
        this.console = console;
        this.tables = tables;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (csv && common.json()) {
            throw new UserInputException(Texts.of("targets.json_or_csv"));
        }
        long given = Stream.of(boat != null, profile != null, !coordinates.isEmpty())
                .filter(Boolean::booleanValue)
                .count();
        if (given != 1) {
            throw new UserInputException(Texts.of("section.which"));
        }
        if (section.source() == SectionSource.COMPUTED && (boat == null || computed)) {
            throw new UserInputException(Texts.of("section.tables"));
        }
        if (boat == null) {
            compute(
                    profile != null
                            ? profile
                            : coordinates.stream().map(Path::toString).collect(Collectors.joining(" ")),
                    profile != null ? FlowRequest.profile(profile) : FlowRequest.coordinates(coordinates));
        } else if (computed) {
            computeWing(BoatFiles.find(boat));
        } else {
            asTargets(BoatFiles.find(boat));
        }
        return CommandRunner.DONE;
    }

    private void computeWing(BoatFile file) {
        if (camberDeg == null) {
            throw new UserInputException(Texts.of("section.closed_form"));
        }
        WingSpec spec = wing.of(file.boat());
        double ratio = NumberCheck.within("--station", station, 0, 1);
        double flapDeg = NumberCheck.within("--camber", camberDeg, -45, 45);
        compute(
                Texts.of("section.wing_name", file.boat().name(), spec.id(), ratio, flapDeg),
                FlowRequest.boat(spec, ratio, Units.fromDegrees(flapDeg)));
    }

    private void compute(String name, List<Contour> elements) {
        FlowRequest request = new FlowRequest(
                name,
                elements,
                Steps.parse("--alpha", alpha, -180, 180).stream()
                        .map(Units::fromDegrees)
                        .toList(),
                NumberCheck.within("--reynolds", reynolds, 1e4, 1e8),
                NumberCheck.within("--ncrit", critical, 1, 15),
                inviscid ? FlowRequest.Fluid.IDEAL : FlowRequest.Fluid.VISCOUS);
        List<FlowRow> rows = FlowRun.of(request);
        if (rows.stream().noneMatch(FlowRow::isSolved)) {
            throw new NoAnswerException(
                    Texts.of("section.no_flow", name, String.valueOf(rows.get(0).reason())));
        }
        if (common.json()) {
            console.json(FlowDocument.json(request, rows));
        } else if (csv) {
            console.text(FlowDocument.csv(rows));
        } else {
            console.line(
                    inviscid
                            ? Texts.of("section.ideal_title", name)
                            : Texts.of("section.viscous_title", name, reynolds, critical));
            console.text(FlowDocument.table(rows));
            console.line(FlowDocument.limitLine(request));
            if (rows.stream().anyMatch(FlowRow::isPastStall)) {
                console.line(Texts.of("section.caveat.past_stall"));
            }
        }
    }

    /** By the model that targets use: closed form or tables, any angle. */
    private void asTargets(BoatFile file) throws InterruptedException {
        List<Double> angles = Steps.parse("--alpha", alpha, -180, 180);
        if (angles.size() != 1 || camberDeg == null || csv || inviscid) {
            throw new UserInputException(Texts.of("section.closed_form"));
        }
        WingSpec spec = wing.of(file.boat());
        double ratio = NumberCheck.within("--station", station, 0, 1);
        double flap = Units.fromDegrees(NumberCheck.within("--camber", camberDeg, -60, 60));
        double re = NumberCheck.within("--reynolds", reynolds, 1e4, 1e8);
        ObjectNode document = SectionDocument.of(
                file, spec, section.sections(spec, tables, console), ratio, Units.fromDegrees(angles.get(0)), flap, re);
        if (common.json()) {
            console.json(document);
            return;
        }
        console.line(
                "%s, wing %s, %.2f m above the foot: chord %.2f m, alpha %.1f deg, flap %.1f deg, Re %.2e",
                document.path("boat").asText(),
                spec.id(),
                document.path("height_above_foot_m").asDouble(),
                document.path("chord_m").asDouble(),
                angles.get(0),
                camberDeg,
                reynolds);
        for (String key : new String[] {
            "lift_coefficient", "drag_coefficient", "lift_over_drag_ratio", "moment_coefficient", "stall_margin_deg"
        }) {
            console.line(
                    "%-28s %10.4f",
                    Texts.of("section." + key), document.path(key).asDouble());
        }
        section.say(console);
        for (JsonNode caveat : document.path("caveats")) {
            console.line(Texts.of("section.caveat." + caveat.asText()));
        }
    }
}
