package trimwright.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DerivedTest {
    @TempDir
    Path folder;

    @Test
    void aTextIsFoundUnderItsInputsAndNoOthers() {
        Derived derived = new Derived(folder);
        derived.keep("one", Map.of("a.txt", "made of one"));
        assertEquals("made of one", derived.find("one", "a.txt"));
        assertNull(derived.find("one", "b.txt"));
        assertNull(derived.find("two", "a.txt"));
    }

    @Test
    void whatAKilledWriterLeftIsNeverReadAndGoesAfterAWhile() throws IOException {
        Path left = Files.createDirectories(folder.resolve(".new-left"));
        Files.writeString(left.resolve("inputs.txt"), "one");
        Files.writeString(left.resolve("a.txt"), "half of i");
        Derived derived = new Derived(folder);
        assertNull(derived.find("one", "a.txt"));
        derived.keep("two", Map.of("a.txt", "made of two"));
        assertTrue(Files.exists(left), "it may be the work of a program that still runs");
        Files.setLastModifiedTime(left, FileTime.from(Instant.now().minus(Duration.ofHours(2))));
        derived.keep("three", Map.of("a.txt", "made of three"));
        assertFalse(Files.exists(left));
        assertEquals("made of two", derived.find("two", "a.txt"));
    }

    @Test
    void theOldestGoWhenThereAreMany() throws IOException {
        Derived derived = new Derived(folder);
        for (int i = 0; i < 20; i++) {
            derived.keep("inputs " + i, Map.of("a.txt", "text " + i));
        }
        try (Stream<Path> kept = Files.list(folder)) {
            assertEquals(8, kept.count());
        }
        assertEquals("text 19", derived.find("inputs 19", "a.txt"));
    }
}
