package trimwright.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.boat.Whimbrel14;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.text.JsonOut;
import trimwright.text.Progress;
import trimwright.units.Units;

class TargetRunTest {
    /** Tests in core use a boat made by hand; it must be the shipped one. */
    @Test
    void theShippedBoatIsTheOneOfTheTestsInCore() {
        BoatFile shipped = BoatFiles.find("whimbrel14");
        assertEquals(Whimbrel14.boat(), shipped.boat());
    }

    @Test
    void theBookHasTheSameBytesOnAnyNumberOfThreads() throws InterruptedException {
        BoatFile boat = BoatFiles.find("whimbrel14");
        TargetGrid grid = new TargetGrid(
                List.of(Units.fromKnots(12), Units.fromKnots(16), Units.fromKnots(20)),
                List.of(Units.fromDegrees(60), Units.fromDegrees(90), Units.fromDegrees(120)));
        TargetRequest request = new TargetRequest(boat, boat.boat().getWing("tall"), grid, Map.of());
        TargetBook one = TargetRun.of(request, 1, Progress.NONE);
        TargetBook three = TargetRun.of(request, 3, Progress.NONE);
        assertEquals(JsonOut.text(TargetDocument.of(boat, one)), JsonOut.text(TargetDocument.of(boat, three)));
    }
}
