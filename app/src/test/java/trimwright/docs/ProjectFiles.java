package trimwright.docs;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** The project's own files, as a checkout has them. */
final class ProjectFiles {
    static final Path ROOT = Path.of(System.getProperty("trimwright.root", ".."))
            .toAbsolutePath()
            .normalize();

    private ProjectFiles() {}

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    static void write(Path file, String text) {
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    /** Files below a folder of the project whose name ends so, without what a build makes; in the order of their paths. */
    static List<Path> below(String folder, String ending) {
        List<Path> found = new ArrayList<>();
        Path start = ROOT.resolve(folder).normalize();
        if (!Files.isDirectory(start)) {
            return found;
        }
        try {
            Files.walkFileTree(start, new SimpleFileVisitor<>() {
                @Override
                public FileVisitResult preVisitDirectory(Path directory, BasicFileAttributes attributes) {
                    String name = directory.getFileName().toString();
                    return !directory.equals(start)
                                    && (name.equals("target") || name.equals(".git") || name.equals("node_modules"))
                            ? FileVisitResult.SKIP_SUBTREE
                            : FileVisitResult.CONTINUE;
                }

                @Override
                public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                    if (file.getFileName().toString().endsWith(ending)) {
                        found.add(file);
                    }
                    return FileVisitResult.CONTINUE;
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(folder, e);
        }
        Collections.sort(found);
        return found;
    }

    /** Jars in a folder that a build makes; empty where there is none yet. */
    static List<Path> jarsOf(String folder) {
        Path path = ROOT.resolve(folder);
        if (!Files.isDirectory(path)) {
            return List.of();
        }
        try (Stream<Path> jars = Files.list(path)) {
            return jars.filter(jar -> jar.toString().endsWith(".jar")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(folder, e);
        }
    }

    /** The path as it is written in a page: from the root, with slashes. */
    static String shown(Path file) {
        return ROOT.relativize(file).toString().replace('\\', '/');
    }
}
