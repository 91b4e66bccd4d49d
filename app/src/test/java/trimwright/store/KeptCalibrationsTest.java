package trimwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptCalibrationsTest {
    private static final String FIRST = "{\"schema\":\"calibration/1\",\"session\":\"one\"}";
    private static final String SECOND = "{\"schema\":\"calibration/1\",\"session\":\"two\"}";

    @TempDir
    Path folder;

    private KeptCalibrations kept() {
        return new KeptCalibrations(folder);
    }

    @Test
    void theLastOneAcceptedAndNotTakenBackIsInForceAndNothingIsReplaced() throws IOException {
        assertNull(kept().findInForce());
        assertFalse(kept().undo());
        kept().accept(FIRST);
        kept().accept(SECOND);
        assertEquals(SECOND, kept().findInForce());
        assertTrue(kept().undo());
        assertEquals(FIRST, kept().findInForce());
        assertTrue(kept().undo());
        assertNull(kept().findInForce());
        assertFalse(kept().undo());
        kept().accept(SECOND);
        assertEquals(SECOND, kept().findInForce());
        try (Stream<Path> files = Files.list(folder.resolve("calibration"))) {
            assertEquals(
                    List.of("001.json", "002.json", "003.json", "004.json", "005.json"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
        assertEquals(FIRST, Files.readString(folder.resolve("calibration/001.json")));
    }
}
