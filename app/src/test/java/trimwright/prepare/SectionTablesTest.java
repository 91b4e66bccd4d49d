package trimwright.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFiles;
import trimwright.polar.ColumnMaker;
import trimwright.profile.WingProfile;
import trimwright.section.SectionColumn;
import trimwright.section.SectionQuantity;
import trimwright.section.SectionTable;
import trimwright.section.TableGrid;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SectionTablesTest {
    private static final WingProfile PROFILE = new WingProfile(0.16, 0.13, 0.4, 0.012, 0.9);

    /** The least that is a table; what is computed well is another test's matter. */
    private static final TableGrid GRID = new TableGrid(
            List.of(0.16), List.of(1e6, 2e6, 4e6), List.of(0.0, 0.15, 0.3), List.of(-1.0, -0.5, 0.0, 0.5, 1.0));

    private final AtomicLong done = new AtomicLong();
    private SectionTable table;

    @BeforeAll
    void compute() throws InterruptedException {
        table = SectionTables.compute(List.of(PROFILE), GRID, 3, done::addAndGet);
    }

    @Test
    void aColumnIsTheSameAloneAndAmongOthers() {
        same(ColumnMaker.of(PROFILE, 2e6, GRID), table.column(0, 1));
        assertEquals(3, done.get());
    }

    @Test
    void aTableComesBackBitByBit(@TempDir Path folder) {
        cache(folder).keep(List.of(PROFILE), table);
        SectionTable back = cache(folder).find(List.of(PROFILE), GRID);
        assertNotNull(back);
        for (int r = 0; r < 3; r++) {
            same(table.column(0, r), back.column(0, r));
        }
    }

    @Test
    void otherOutlinesOrNodesHaveAnotherTable(@TempDir Path folder) {
        cache(folder).keep(List.of(PROFILE), table);
        assertNull(cache(folder).find(List.of(new WingProfile(0.16, 0.13, 0.4, 0.013, 0.9)), GRID));
        TableGrid other = new TableGrid(GRID.thicknesses(), GRID.reynolds(), List.of(0.0, 0.15, 0.31), GRID.places());
        assertNull(cache(folder).find(List.of(PROFILE), other));
    }

    @Test
    void aBrokenFileIsNotRead(@TempDir Path folder) throws IOException {
        cache(folder).keep(List.of(PROFILE), table);
        Path file;
        try (Stream<Path> files = Files.list(folder)) {
            file = files.findFirst().orElseThrow();
        }
        byte[] whole = Files.readAllBytes(file);
        for (int at : new int[] {0, 80, whole.length / 2, whole.length - 1}) {
            byte[] flipped = whole.clone();
            flipped[at] ^= 1;
            Files.write(file, flipped);
            assertNull(cache(folder).find(List.of(PROFILE), GRID));
        }
    }

    @Test
    void bothWingsOfTheDemoBoatShareATable() {
        List<Long> steps = BoatFiles.find("whimbrel14").boat().wings().stream()
                .map(SectionTables::steps)
                .toList();
        assertEquals(List.of(12L, 12L), steps);
        List<WingSpec> wings = BoatFiles.find("whimbrel14").boat().wings();
        assertEquals(SectionTables.profilesOf(wings.get(0)), SectionTables.profilesOf(wings.get(1)));
    }

    private static TableCache cache(Path folder) {
        return new TableCache(folder, note -> {
            throw new AssertionError(note);
        });
    }

    private static void same(SectionColumn one, SectionColumn other) {
        assertEquals(one.filled(), other.filled());
        for (int j = 0; j < GRID.flaps().size(); j++) {
            assertEquals(one.low(j), other.low(j));
            assertEquals(one.high(j), other.high(j));
            for (SectionQuantity quantity : SectionQuantity.values()) {
                for (int i = 0; i < GRID.places().size(); i++) {
                    assertEquals(one.value(quantity, j, i), other.value(quantity, j, i));
                }
            }
        }
    }
}
