package trimwright.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.SectionTables;
import trimwright.prepare.Sections;
import trimwright.prepare.WingDocument;
import trimwright.prepare.WingInput;
import trimwright.prepare.WingState;
import trimwright.text.TextTable;
import trimwright.text.Texts;

/** Computes force, loads and stall of a wing as it is set. */
@Command(name = "wing")
public final class WingCommand implements Callable<Integer> {
    /** Strips that are printed: near foot, middle, near head; those that Explore draws. */
    private static final int[] SHOWN = {4, WingDocument.STRIPS / 2, WingDocument.STRIPS - 5};

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Mixin
    private final BoatOption boat = new BoatOption();

    @Mixin
    private final WingOption wing = new WingOption();

    @Mixin
    private final SectionOption section = new SectionOption();

    private final Map<WingInput, Double> given = new EnumMap<>(WingInput.class);

    @Option(names = "--aws", paramLabel = "KN", descriptionKey = "wing.aws")
    void setAwsKn(double value) {
        given.put(WingInput.APPARENT_WIND_SPEED, value);
    }

    @Option(names = "--awa", paramLabel = "DEG", descriptionKey = "wing.awa")
    void setAwaDeg(double value) {
        given.put(WingInput.APPARENT_WIND_ANGLE, value);
    }

    @Option(names = "--tws", paramLabel = "KN", descriptionKey = "wing.tws")
    void setTwsKn(double value) {
        given.put(WingInput.TRUE_WIND_SPEED, value);
    }

    @Option(names = "--twa", paramLabel = "DEG", descriptionKey = "wing.twa")
    void setTwaDeg(double value) {
        given.put(WingInput.TRUE_WIND_ANGLE, value);
    }

    @Option(names = "--boat-speed", paramLabel = "KN", descriptionKey = "wing.boat_speed")
    void setBoatSpeedKn(double value) {
        given.put(WingInput.BOAT_SPEED, value);
    }

    @Option(names = "--leeway", paramLabel = "DEG", descriptionKey = "wing.leeway")
    void setLeewayDeg(double value) {
        given.put(WingInput.LEEWAY, value);
    }

    @Option(names = "--camber", paramLabel = "DEG", descriptionKey = "wing.camber")
    void setCamberDeg(double value) {
        given.put(WingInput.CAMBER, value);
    }

    @Option(names = "--twist", paramLabel = "DEG", descriptionKey = "wing.twist")
    void setTwistDeg(double value) {
        given.put(WingInput.TWIST, value);
    }

    @Option(names = "--twist-mid", paramLabel = "RATIO", descriptionKey = "wing.twist_mid")
    void setTwistMidRatio(double value) {
        given.put(WingInput.TWIST_MID_RATIO, value);
    }

    @Option(names = "--sheet", paramLabel = "DEG", descriptionKey = "wing.sheet")
    void setSheetDeg(double value) {
        given.put(WingInput.SHEET, value);
    }

    @Option(names = "--heel", paramLabel = "DEG", descriptionKey = "wing.heel")
    void setHeelDeg(double value) {
        given.put(WingInput.HEEL, value);
    }

    @Option(names = "--ride-height", paramLabel = "M", descriptionKey = "wing.ride_height")
    void setRideHeightM(double value) {
        given.put(WingInput.RIDE_HEIGHT, value);
    }

    @Option(names = "--pitch", paramLabel = "DEG", descriptionKey = "wing.pitch")
    void setPitchDeg(double value) {
        given.put(WingInput.PITCH, value);
    }

    @Option(names = "--pressure", descriptionKey = "wing.pressure")
    private boolean pressure;

    private final Console console;
    private final SectionTables tables;

    public WingCommand(Console console, SectionTables tables) {
        this.console = console;
        this.tables = tables;
    }

    @Override
    public Integer call() throws InterruptedException {
        BoatFile file = boat.load();
        WingSpec spec = wing.of(file.boat());
        WingState state = WingState.of(spec, given, WingInput::option);
        Sections sections = section.sections(spec, tables, console);
        ObjectNode document = pressure
                ? WingDocument.withPressures(file, spec, sections, state, SHOWN[0], SHOWN[1], SHOWN[2])
                : WingDocument.of(file, spec, sections, state);
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
                document.path("aws_kn").asDouble(),
                document.path("awa_deg").asDouble(),
                document.path("camber_deg").asDouble(),
                document.path("twist_deg").asDouble(),
                document.path("sheet_deg").asDouble(),
                document.path("heel_deg").asDouble());
        for (String key : new String[] {
            "drive_force_n",
            "side_force_n",
            "heeling_moment_nm",
            "sheet_load_n",
            "sheet_tail_load_n",
            "grinding_power_w",
            "induced_drag_n",
            "profile_drag_n",
            "effort_height_above_foot_m",
            "stall_margin_deg",
            "stall_height_above_foot_m"
        }) {
            console.line(
                    "%-36s %12.1f", Texts.of("wing." + key), document.path(key).asDouble());
        }
        for (JsonNode panel : document.path("flap_panels")) {
            console.line(
                    "%-36s %12.1f",
                    Texts.of(
                            "wing.hinge_moment_nm",
                            panel.path("from_m").asDouble(),
                            panel.path("to_m").asDouble()),
                    panel.path("hinge_moment_nm").asDouble());
        }
        printStrips(document.path("strips"));
        for (JsonNode section : document.path("pressures")) {
            printFlow(section);
        }
        for (JsonNode limit : document.path("limits")) {
            console.line(Texts.of("wing.limit." + limit.asText()));
        }
        section.say(console);
        for (JsonNode caveat : document.path("caveats")) {
            console.line(Texts.of("web.caveat." + caveat.asText()));
        }
        if (document.path("sheet_slack").asBoolean()) {
            console.line(Texts.of("wing.sheet_slack"));
        }
        console.line(Texts.of("web.caution.short"));
    }

    private void printStrips(JsonNode strips) {
        TextTable table = new TextTable(Texts.of("wing.strips"));
        for (int strip : SHOWN) {
            JsonNode at = strips.path(strip);
            table.row(Stream.of(
                            "height_above_foot_m",
                            "alpha_deg",
                            "flap_angle_deg",
                            "lift_coefficient",
                            "stall_margin_deg")
                    .map(key -> String.format(
                            Locale.ROOT,
                            key.equals("lift_coefficient") ? "%.2f" : "%.1f",
                            at.path(key).asDouble()))
                    .toList());
        }
        table.text().lines().forEach(line -> console.line("%s", line));
    }

    private void printFlow(JsonNode section) {
        double height = section.path("height_above_foot_m").asDouble();
        if (section.has("lift_coefficient")) {
            console.line(Texts.of(
                    "wing.pressure." + section.path("fluid").asText(),
                    height,
                    section.path("lift_coefficient").asDouble(),
                    section.path("wing_lift_coefficient").asDouble()));
            if (section.has("lift_lost_ratio")) {
                console.line(Texts.of(
                        "wing.pressure.lost",
                        height,
                        100 * section.path("lift_lost_ratio").asDouble()));
            }
        } else {
            console.line("%s", section.path("reason").asText());
        }
    }
}
