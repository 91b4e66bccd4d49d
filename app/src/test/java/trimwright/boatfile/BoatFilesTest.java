package trimwright.boatfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.boat.Boat;
import trimwright.boat.BoatMarks;
import trimwright.boat.ControlMarks;
import trimwright.boat.FlapPanels;
import trimwright.boat.FootPlate;
import trimwright.boat.MarkedControl;
import trimwright.boat.Side;
import trimwright.boat.Whimbrel14;
import trimwright.keyfile.Fault;
import trimwright.text.UserInputException;

class BoatFilesTest {
    private static final String GOOD = BoatFiles.shippedText("whimbrel14");

    @TempDir
    Path folder;

    @Test
    void theShippedBoatHasNoFaultsAndReadsAsSi() {
        assertEquals(List.of(), faultsOf(GOOD));
        Boat boat = BoatFiles.find("whimbrel14").boat();
        assertEquals("Whimbrel 14", boat.title());
        assertEquals(26.0, boat.getWing("tall").span());
        assertEquals(38 * Math.PI / 180, boat.getWing("tall").trim().camberMax(), 1e-15);
        assertEquals(3, boat.getWing("short").stations().size());
        assertEquals(510, boat.crew().mass());
        assertEquals(6500, boat.limits().elevatorDownForce());
        assertTrue(boat.windSensor().turnsWithWing());
    }

    @Test
    void theShippedBoatIsTheOneThatTestsOfTheModelUse() {
        assertEquals(Whimbrel14.boat(), BoatFiles.find("whimbrel14").boat());
    }

    @Test
    void aFlapMayHaveStiffPanels() {
        assertEquals(
                FlapPanels.SINGLE,
                BoatFiles.find("whimbrel14").boat().getWing("tall").flapPanels());
        String panels = GOOD.replaceFirst(
                "slot_gap_ratio",
                "flap_joint = [ { height_m = 9 }, { height_m = 17.5 } ]\nflap_panels_stiff = true\nslot_gap_ratio");
        FlapPanels read =
                BoatFiles.parse("a.toml", bytes(panels)).boat().getWing("tall").flapPanels();
        assertEquals(new FlapPanels(List.of(9.0, 17.5), FlapPanels.Make.STIFF), read);
        List<Fault> faults = faultsOf(panels.replace("17.5", "27.5"));
        assertEquals(1, faults.size());
        assertEquals("wing[0].flap_joint[1].height_m", faults.get(0).key());
    }

    @Test
    void whatLiesUnderTheFootIsToldWholeOrNotAtAll() {
        assertEquals(null, BoatFiles.find("whimbrel14").boat().getWing("tall").footPlate());
        String plate = GOOD.replaceFirst(
                "slot_gap_ratio", "foot_plate = { width_m = 6, gap_m = 0.4, solid_ratio = 0.5 }\nslot_gap_ratio");
        assertEquals(
                new FootPlate(6, 0.4, 0.5),
                BoatFiles.parse("a.toml", bytes(plate)).boat().getWing("tall").footPlate());
        assertEquals(
                "wing[0].foot_plate.gap_m",
                faultsOf(plate.replace("0.4, solid", "1.6, solid")).get(0).key());
        assertEquals(1, faultsOf(plate.replace("gap_m = 0.4, ", "")).size());
    }

    private static final String TWO_TACKS = GOOD + """
            port_tack = [
              { angle_deg = 0, reading = 31 },
              { angle_deg = 20, reading = 19 },
              { angle_deg = 60, reading = 0 },
            ]
            """;

    @Test
    void marksAreReadPerTackAndPortIsAsStarboardWhereItIsLeftOut() {
        BoatFile file = BoatFiles.parse("a.toml", bytes(TWO_TACKS));
        ControlMarks camber = Objects.requireNonNull(file.marks().find("tall", MarkedControl.CAMBER));
        assertEquals("steps", camber.unit());
        assertEquals(2, camber.on(Side.PORT).reading(6 * Math.PI / 180), 1e-12);
        ControlMarks sheet = Objects.requireNonNull(file.marks().find("short", MarkedControl.SHEET));
        assertEquals(24, sheet.on(Side.STARBOARD).reading(10 * Math.PI / 180), 1e-12);
        assertEquals(25, sheet.on(Side.PORT).reading(10 * Math.PI / 180), 1e-12);
        assertEquals(null, file.marks().find("tall", MarkedControl.TWIST));
        String none = GOOD.substring(0, GOOD.indexOf("# What the crew reads"));
        assertEquals(BoatMarks.NONE, BoatFiles.parse("a.toml", bytes(none)).marks());
    }

    @ParameterizedTest
    @CsvSource({
        "control = \"camber\", control = \"flap\", mark[0].control",
        "control = \"camber\", control = \"sheet\", mark[1].control",
        "unit = \"steps\", unit = \"steps\"\\nwing = \"small\", mark[0].wing",
        "angle_deg = 12, angle_deg = -1, mark[0].starboard_tack[1].angle_deg",
        "reading = 19, reading = 31, mark[1].port_tack[1].reading",
        "reading = 14, reading = 3, mark[0].starboard_tack[2].reading"
    })
    void marksThatCannotBeReadBothWaysAreFaults(String good, String bad, String key) {
        List<Fault> faults = faultsOf(TWO_TACKS.replace(good, bad.replace("\\n", "\n")));
        assertEquals(List.of(key), faults.stream().map(Fault::key).toList());
    }

    @Test
    void aFoilSetSaysWhatDiffersAndAFileWithoutAnyHasTheStandardOne() {
        BoatFile file = BoatFiles.find("whimbrel14");
        assertEquals("standard", file.boat().foils().id());
        Boat light = file.withFoils("light").boat();
        assertEquals(1.8 * 0.42, light.mainFoil().tipArea(), 1e-12);
        assertEquals(1.6 * 0.33, file.boat().mainFoil().tipArea(), 1e-12);
        assertEquals(file.boat().mainFoil().shaftLength(), light.mainFoil().shaftLength());
        assertEquals(file.boat().rudder().x(), light.rudder().x());
        assertEquals(file, file.withCrewMass(510).withFoils("standard"));
        assertEquals(file.boat(), file.withFoils("light").withFoils("standard").boat());
        String without = GOOD.substring(0, GOOD.indexOf("[[foil_set]]")) + GOOD.substring(GOOD.indexOf("[windage]"));
        assertEquals(
                file.boat().foils(),
                BoatFiles.parse("a.toml", bytes(without)).boat().foilSets().get(0));
        UserInputException e = assertThrows(UserInputException.class, () -> file.withFoils("large"));
        assertTrue(String.valueOf(e.getMessage()).contains("standard, light"));
    }

    @Test
    void classSpeedLimitMayBeLeftOutAndIsReadInMetresPerSecond() {
        assertEquals(null, BoatFiles.find("whimbrel14").boat().limits().boatSpeedMax());
        String limited = GOOD.replace("[limits]", "[limits]\nboat_speed_max_kn = 54");
        Double limit = BoatFiles.parse("a.toml", bytes(limited)).boat().limits().boatSpeedMax();
        assertEquals(100_008 / 3600.0, limit == null ? Double.NaN : limit, 1e-12);
    }

    @Test
    void everyFaultIsFoundAtOnceWithItsLineAndKey() {
        String bad = GOOD.replace("beam_m = 0.70 ", "beam_m = 70 ")
                .replace("mass_each_kg = 85", "mass_each_lb = 187")
                .replace("elevator_down_force_n = 6500", "")
                .replace("turns_with_wing = true", "turns_with_wing = \"yes\"")
                .replace("height_m = 13.0,", "height_m = 27.0,");
        List<Fault> faults = faultsOf(bad);
        assertEquals(
                List.of(
                        "hulls.beam_m",
                        "crew.mass_each_kg",
                        "crew.mass_each_lb",
                        "wing[0].station[2].height_m",
                        "limits.elevator_down_force_n",
                        "sensor.wind.turns_with_wing"),
                faults.stream().map(Fault::key).toList());
        assertEquals(lineOf(bad, "beam_m = 70"), faults.get(0).line());
        assertEquals("70 m; expected 0.1 to 3 m", faults.get(0).message());
        assertEquals("unknown key; maybe mass_each_kg is meant", faults.get(2).message());
        assertEquals(lineOf(bad, "mass_each_lb"), faults.get(2).line());
        assertEquals(lineOf(bad, "[limits]"), faults.get(4).line());
        assertTrue(
                faults.get(5).message().contains("true or false"), faults.get(5).message());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    [7.0, 0.3, 0.5]                                    | an array; expected one table, [wing.foot_plate] in single brackets,
                    [{ width_m = 7.0, gap_m = 0.3, solid_ratio = 0.5 }]| an array; expected one table, [wing.foot_plate] in single brackets,
                    7.0                                                | expected a table [wing.foot_plate]
                    """)
    void aFootPlateThatIsNoTableIsToldSo(String value, String message) {
        List<Fault> faults =
                faultsOf(GOOD.replaceFirst("slot_gap_ratio", "foot_plate = " + value + "\nslot_gap_ratio"));
        assertEquals(1, faults.size());
        assertEquals("wing[0].foot_plate", faults.get(0).key());
        assertEquals(
                message + " with width_m, gap_m, solid_ratio", faults.get(0).message());
    }

    @ParameterizedTest
    @ValueSource(strings = {"jib_area_m2", "headsail_area_m2", "genoa", "storm-jib"})
    void aHeadsailIsRefusedWithTheReason(String key) {
        List<Fault> faults = faultsOf(GOOD + "\n[" + key + "]\narea = 12\n");
        assertEquals(1, faults.size());
        assertTrue(
                faults.get(0).message().contains("no headsail"), faults.get(0).message());
    }

    /** Each row makes one boat that cannot be, by one replacement, and names the key at fault. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "y_max_m = 3.7|y_max_m = 5.1|crew.y_max_m",
                "waterline_length_m = 13.9|waterline_length_m = 14.9|hulls.waterline_length_m",
                "mass_kg = 1930|mass_kg = 4000|hulls.draft_m",
                "x_m = -1.75|x_m = 3|platform.x_m",
                "y_lift_m = 3.75|y_lift_m = 4.5|main_foil.y_lift_m",
                "y_lift_m = 3.75|y_lift_m = 2.5|main_foil.y_lift_m",
                "rake_min_deg = -3|rake_min_deg = 12|main_foil.rake_min_deg",
                "y_lift_m = 3.67|y_lift_m = 4.5|foil_set[0].main_foil.y_lift_m",
                "y_lift_m = 3.67|y_lift_m = 2.5|foil_set[0].main_foil.y_lift_m",
                "y_lift_m = 3.67|rake_min_deg = 11|foil_set[0].main_foil.rake_min_deg",
                "y_lift_m = 3.67|shaft_length_m = 1.5|foil_set[0].main_foil.shaft_length_m",
                "id = \"light\"|id = \"standard\"|foil_set[0].id",
                "heel_min_deg = -2|heel_min_deg = 6|limits.heel_min_deg",
                "ride_height_max_m = 1.4|ride_height_max_m = 1.85|limits.ride_height_max_m",
                "immersion_min_m = 0.4|immersion_min_m = 1|limits.ride_height_max_m",
                "pitch_max_deg = 4|pitch_max_deg = -3|limits.pitch_min_deg",
                "mass_height_m = 9.9|mass_height_m = 27|wing[0].mass_height_m",
                "lever_m = 4.0|lever_m = 5.5|wing[0].sheet.lever_m",
                "turning_axis_ratio = 0.22 |turning_axis_ratio = 0.6000001|wing[0].turning_axis_ratio",
                "height_m = 0.0, chord_m = 5.2|height_m = 1.0, chord_m = 5.2|wing[0].station[0].height_m",
                "height_m = 26.0|height_m = 13.0|wing[0].station[2].height_m",
                "id = \"short\"|id = \"tall\"|wing[1].id",
                "name = \"whimbrel14\"|name = \"Whimbrel 14\"|name",
                "aft_of_bow_m = 12.5|aft_of_bow_m = 15|antenna.aft_of_bow_m"
            })
    void boatsThatCannotBeAreFaulty(String good, String bad, String key) {
        assertTrue(GOOD.contains(good), good);
        List<Fault> faults = faultsOf(GOOD.replaceFirst(java.util.regex.Pattern.quote(good), bad));
        assertTrue(faults.stream().anyMatch(fault -> fault.key().equals(key) && fault.line() > 0), faults.toString());
    }

    @Test
    void filesThatAreNoBoatFilesGetOneLine() {
        assertEquals(1, faultsOf("\u0000\u0001").size());
        assertEquals(1, BoatFiles.check(new byte[] {(byte) 0xC3, (byte) 0x28}).size());
        List<Fault> broken = faultsOf("schema = \"boat/1\"\nname = \n");
        assertTrue(broken.get(0).line() == 2 && broken.get(0).message().startsWith("not TOML"), broken.toString());
        assertTrue(faultsOf("").size() > 5);
        assertTrue(faultsOf(GOOD.replace("boat/1", "boat/9")).get(0).message().contains("boat/9"));
        assertEquals(List.of(), faultsOf("\uFEFF" + GOOD));
        assertTrue(faultsOf(GOOD.replace("beam_m = 0.70 ", "beam_m = nan "))
                .get(0)
                .message()
                .startsWith("NaN m"));
    }

    @Test
    void aPathHasASlashOrTheEndingAndAllElseIsShipped() throws IOException {
        Path file = folder.resolve("mine.toml");
        Files.writeString(file, GOOD);
        assertEquals(BoatFiles.find("whimbrel14"), BoatFiles.find(file.toString()));
        for (String missing : new String[] {"nosuchboat", "nosuchboat.toml", folder + "/none", folder.toString()}) {
            UserInputException e = assertThrows(UserInputException.class, () -> BoatFiles.find(missing));
            assertEquals(1, String.valueOf(e.getMessage()).lines().count());
        }
    }

    @Test
    void theHashFollowsTheBytes() {
        String hash = BoatFiles.find("whimbrel14").hash();
        assertTrue(hash.matches("[0-9a-f]{16}"), hash);
        assertTrue(!hash.equals(BoatFiles.parse("a", bytes(GOOD + "# note\n")).hash()));
    }

    private static List<Fault> faultsOf(String toml) {
        return BoatFiles.check(bytes(toml));
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static int lineOf(String text, String part) {
        return (int) text.substring(0, text.indexOf(part)).lines().count()
                + (text.charAt(text.indexOf(part) - 1) == '\n' ? 1 : 0);
    }
}
