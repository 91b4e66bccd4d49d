package trimwright.coursefile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import trimwright.course.Course;
import trimwright.keyfile.Fault;
import trimwright.keyfile.KeyFile;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Reads course files. */
public final class CourseFiles {
    private static final int MOST_BYTES = 1_000_000;

    private CourseFiles() {}

    /**
     * Reads the file.
     *
     * @throws UserInputException with a line for each fault
     */
    public static Course read(Path file) {
        return parse(bytes(file), file.toString());
    }

    /** The bytes of a course file, whatever stands in them. */
    public static byte[] bytes(Path file) {
        try {
            if (Files.isDirectory(file) || Files.size(file) > MOST_BYTES) {
                throw new UserInputException(Texts.of("course.not_a_course", file));
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UserInputException(Texts.of("course.unreadable", file), e);
        }
    }

    /**
     * The course in those bytes.
     *
     * @param name of the file, for the faults
     * @throws UserInputException with a line for each fault
     */
    public static Course parse(byte[] toml, String name) {
        KeyFile file = KeyFile.read(new String(toml, StandardCharsets.UTF_8), CourseKeys.TABLE, key -> null);
        CourseLoader loader = new CourseLoader(file.values());
        Course course = file.faults().isEmpty() ? loader.load() : null;
        if (course == null) {
            List<Fault> faults = file.faults().isEmpty() ? loader.faults() : file.faults();
            throw new UserInputException(faults.stream()
                    .distinct()
                    .sorted(Fault.BY_PLACE)
                    .map(fault -> fault.text(name))
                    .collect(Collectors.joining("\n")));
        }
        return course;
    }
}
