package trimwright.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.platform.Variable;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.text.JsonOut;
import trimwright.text.Progress;
import trimwright.units.Units;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BookCacheTest {
    private static final BoatFile BOAT = BoatFiles.find("whimbrel14");

    private final TargetRequest request = request(100, Map.of());
    private TargetBook book;

    private static TargetRequest request(double angleDeg, Map<Variable, Double> held) {
        TargetGrid grid = new TargetGrid(List.of(Units.fromKnots(14)), List.of(Units.fromDegrees(angleDeg)));
        return new TargetRequest(BOAT, BOAT.boat().getWing("tall"), grid, held);
    }

    @BeforeAll
    void compute() throws InterruptedException {
        book = TargetRun.of(request, Progress.NONE);
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> found = Files.list(folder)) {
            return found.toList();
        }
    }

    private static BookCache cache(Path folder) {
        return new BookCache(folder, note -> {
            throw new AssertionError(note);
        });
    }

    @Test
    void aBookComesBackBitByBit(@TempDir Path folder) {
        cache(folder).keep(request, book);
        TargetBook back = cache(folder).find(request);
        assertNotNull(back);
        assertEquals(book.points(), back.points());
        assertEquals(book.grid(), back.grid());
        assertEquals(
                List.of(book.boat(), book.wing(), book.modelVersion()),
                List.of(back.boat(), back.wing(), back.modelVersion()));
        assertEquals(JsonOut.text(TargetDocument.of(BOAT, book)), JsonOut.text(TargetDocument.of(BOAT, back)));
    }

    @Test
    void anotherQuestionHasAnotherBook(@TempDir Path folder) {
        BookCache cache = cache(folder);
        cache.keep(request, book);
        assertNull(cache.find(request(101, Map.of())));
        assertNull(cache.find(request(100, Map.of(Variable.CAMBER, 0.2))));
        BoatFile heavier = new BoatFile(BOAT.boat(), BOAT.marks(), BOAT.text() + "# heavier\n", "0123456789abcdef");
        for (BoatFile other : List.of(heavier, BOAT.withFoils("light"), BOAT.withCrewMass(500))) {
            assertNull(cache.find(new TargetRequest(other, request.wing(), request.grid(), Map.of())));
        }
    }

    @Test
    void aBrokenOrForeignFileIsNotReadAndIsWrittenAnew(@TempDir Path folder) throws IOException {
        BookCache cache = cache(folder);
        cache.keep(request, book);
        Path file = files(folder).get(0);
        byte[] whole = Files.readAllBytes(file);
        List<byte[]> broken = new ArrayList<>(
                List.of(new byte[0], "not a book".getBytes(StandardCharsets.US_ASCII), new byte[whole.length]));
        for (int at : new int[] {0, 70, whole.length / 2, whole.length - 1}) {
            byte[] flipped = whole.clone();
            flipped[at] ^= 1;
            broken.add(flipped);
        }
        broken.add(BookBytes.write("another key", book));
        for (byte[] bytes : broken) {
            Files.write(file, bytes);
            assertNull(cache.find(request));
            cache.keep(request, book);
            assertNotNull(cache.find(request));
        }
    }

    @Test
    void onlyTheNewestAreKeptAndNothingIsLeftAside(@TempDir Path folder) throws IOException {
        BookCache cache = cache(folder);
        for (int i = 0; i < 40; i++) {
            Files.setLastModifiedTime(
                    Files.createFile(folder.resolve("old" + i + ".book")), FileTime.fromMillis(1000L * i));
        }
        cache.keep(request, book);
        assertEquals(30, files(folder).size());
        assertNotNull(cache.find(request));
        assertFalse(Files.exists(folder.resolve("old10.book")));
        assertTrue(Files.exists(folder.resolve("old11.book")));
    }

    @Test
    void aFolderThatCannotBeWrittenIsOneNote(@TempDir Path folder) throws IOException {
        Path occupied = Files.createFile(folder.resolve("occupied"));
        List<String> notes = new ArrayList<>();
        BookCache cache = new BookCache(occupied.resolve("targets"), notes::add);
        cache.keep(request, book);
        cache.keep(request, book);
        assertNull(cache.find(request));
        assertEquals(1, notes.size());
        assertEquals(1, notes.get(0).lines().count());
    }
}
