package trimwright.prepare;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import trimwright.profile.Outline;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * Reads the outline of one element: two numbers a line, x and y, from the trailing edge round to the trailing edge. Lines before
 * the first numbers are a title; empty lines and lines that begin with # are passed over.
 */
final class OutlineFile {
    /** Chosen: a thousand times an outline's usual size. */
    private static final long MOST_BYTES = 10_000_000;

    private OutlineFile() {}

    static Outline read(Path file) {
        List<double[]> points = new ArrayList<>();
        int number = 0;
        for (String line : text(file).split("\\R", -1)) {
            number++;
            String trimmed = line.strip();
            if (trimmed.isEmpty() || trimmed.startsWith("#")) {
                continue;
            }
            double[] point = point(trimmed);
            if (point.length == 2) {
                points.add(point);
            } else if (!points.isEmpty()) {
                throw new UserInputException(Texts.of("section.no_point", file, number, trimmed));
            }
        }
        try {
            return Outline.through(
                    points.stream().mapToDouble(point -> point[0]).toArray(),
                    points.stream().mapToDouble(point -> point[1]).toArray());
        } catch (IllegalArgumentException e) {
            throw new UserInputException(Texts.of("section.no_outline", file, String.valueOf(e.getMessage())), e);
        }
    }

    private static String text(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new UserInputException(Texts.of("section.no_outline", file, Texts.of("section.too_large")));
            }
            return Files.readString(file, StandardCharsets.ISO_8859_1);
        } catch (NoSuchFileException e) {
            throw new UserInputException(Texts.of("section.no_file", file), e);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    /** Two finite numbers, or an empty array. */
    private static double[] point(String line) {
        String[] cells = line.split("[\\s,;]+", -1);
        if (cells.length != 2) {
            return new double[0];
        }
        try {
            double[] point = {Double.parseDouble(cells[0]), Double.parseDouble(cells[1])};
            return Double.isFinite(point[0]) && Double.isFinite(point[1]) ? point : new double[0];
        } catch (NumberFormatException e) {
            return new double[0];
        }
    }
}
