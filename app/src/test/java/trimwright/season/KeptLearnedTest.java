package trimwright.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.learned.LearnedPlace;
import trimwright.learned.LearnedTargets;
import trimwright.text.UserInputException;
import trimwright.units.Units;

class KeptLearnedTest {
    private static final BoatFile BOAT = BoatFiles.find("whimbrel14");
    private static final WingSpec WING = BOAT.boat().wings().get(0);

    @TempDir
    private Path folder;

    private static Learned learned(double logRatio) {
        List<Double> winds = List.of(Units.fromKnots(10), Units.fromKnots(12));
        List<Double> angles = List.of(Units.fromDegrees(40), Units.fromDegrees(45));
        List<LearnedPlace> places = winds.stream()
                .flatMap(wind ->
                        angles.stream().map(angle -> new LearnedPlace(wind, angle, logRatio, 0.006, 0.9, 1200, 7)))
                .toList();
        return new Learned(
                BOAT.boat().name(),
                WING.id(),
                BOAT.boat().foils().id(),
                BOAT.boat().crew().mass(),
                BOAT.hash(),
                List.of(new Learned.Used("2027-03-06-avocet", List.of("Avocet"), 1200)),
                new LearnedTargets(winds, angles, places));
    }

    @Test
    void whatWasLearntLastIsFoundAndNothingIsReplaced() {
        KeptLearned kept = new KeptLearned(folder);
        Path first = kept.keep(learned(-0.02));
        assertEquals(first, kept.keep(learned(-0.02)));
        Path second = kept.keep(learned(-0.03));
        assertTrue(Files.exists(first) && !first.equals(second));
        Learned found = kept.get(BOAT, WING);
        assertEquals(learned(-0.03).sessions(), found.sessions());
        LearnedPlace place = found.targets().places().get(3);
        assertEquals(-0.03, place.logRatio());
        assertEquals(Units.fromDegrees(45), place.angle(), 1e-12);
        assertEquals(1200, place.seconds());
        assertEquals(7, place.sessions());
    }

    @Test
    void whereNothingIsLearntOneLineSaysWhatToDo() {
        UserInputException none = assertThrows(UserInputException.class, () -> new KeptLearned(folder).get(BOAT, WING));
        assertTrue(String.valueOf(none.getMessage()).contains("trimwright learn"), none.getMessage());
    }

    @Test
    void whatWasLearntOfAnotherBoatFileOrCrewIsRefused() {
        KeptLearned kept = new KeptLearned(folder);
        kept.keep(learned(-0.02));
        BoatFile lighter = BOAT.withCrewMass(BOAT.boat().crew().mass() - 20);
        assertThrows(UserInputException.class, () -> kept.get(lighter, WING));
    }

    @Test
    void aSpoiledFileIsNamed() throws IOException {
        KeptLearned kept = new KeptLearned(folder);
        Path file = kept.keep(learned(-0.02));
        for (String text : List.of("{", "{\"schema\":\"other/1\"}", "{\"schema\":\"learned-targets/1\"}")) {
            Files.writeString(file, text);
            UserInputException spoiled = assertThrows(UserInputException.class, () -> kept.get(BOAT, WING));
            assertTrue(
                    String.valueOf(spoiled.getMessage())
                            .contains(file.getFileName().toString()),
                    spoiled.getMessage());
        }
    }
}
