package trimwright.prepare;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import trimwright.platform.Platform;
import trimwright.text.Texts;

/**
 * A mark that changes with any class of the program. A version that somebody has to raise by hand gets forgotten, and an
 * old book would then pass for a new one.
 */
public final class ModelFingerprint {
    private ModelFingerprint() {}

    /** Classes and sentences of the program as hexadecimal digits, or null where it cannot read its own classes. */
    public static @Nullable String ofProgram() {
        MessageDigest digest = BookKey.sha256();
        digest.update(Texts.startingWith("").toString().getBytes(StandardCharsets.UTF_8));
        return addTo(digest) ? HexFormat.of().formatHex(digest.digest()) : null;
    }

    /** Adds the mark to a digest; false where the program cannot read its own classes. */
    static boolean addTo(MessageDigest digest) {
        return addTo(digest, name -> true);
    }

    /** Adds the mark of those class files only whose names are wanted. */
    static boolean addTo(MessageDigest digest, Predicate<String> wanted) {
        for (Class<?> part : List.of(Platform.class, ModelFingerprint.class)) {
            Map<String, Long> sums = sumsBeside(part);
            if (sums == null) {
                return false;
            }
            sums.forEach((name, sum) -> {
                if (wanted.test(name)) {
                    digest.update((name + " " + sum + "\n").getBytes(StandardCharsets.UTF_8));
                }
            });
        }
        return true;
    }

    /** Name and check sum of each class file in the jar or folder that a class came from. */
    private static @Nullable Map<String, Long> sumsBeside(Class<?> part) {
        CodeSource source = part.getProtectionDomain().getCodeSource();
        if (source == null) {
            return null;
        }
        try {
            Path place = Path.of(source.getLocation().toURI());
            return Files.isDirectory(place) ? sumsInFolder(place) : sumsInJar(place);
        } catch (IOException | UncheckedIOException | URISyntaxException | IllegalArgumentException e) {
            return null;
        }
    }

    private static Map<String, Long> sumsInJar(Path jar) throws IOException {
        Map<String, Long> sums = new TreeMap<>();
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                if (entry.getName().endsWith(".class")) {
                    sums.put(entry.getName(), entry.getCrc());
                }
            }
        }
        return sums;
    }

    private static Map<String, Long> sumsInFolder(Path folder) throws IOException {
        Map<String, Long> sums = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file :
                    files.filter(path -> path.toString().endsWith(".class")).toList()) {
                CRC32 sum = new CRC32();
                sum.update(Files.readAllBytes(file));
                sums.put(folder.relativize(file).toString().replace('\\', '/'), sum.getValue());
            }
        }
        return sums;
    }
}
