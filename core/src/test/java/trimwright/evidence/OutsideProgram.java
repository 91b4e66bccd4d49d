package trimwright.evidence;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.opentest4j.TestAbortedException;

/** A program that is no part of the project and that tests compare with. It runs as a process of its own. */
public final class OutsideProgram {
    private static final long LONGEST_SECONDS = 60;

    private final String name;
    private final Path file;

    private OutsideProgram(String name, Path file) {
        this.name = name;
        this.file = file;
    }

    /**
     * The program of that name on the path. Where it is absent the test is skipped, or fails if
     * {@code trimwright.reference.required} is true.
     *
     * @param debianPackage what to install; ./verify installs the same
     */
    public static OutsideProgram get(String name, String debianPackage) {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator, -1)) {
            Path file = Path.of(folder, name);
            if (Files.isExecutable(file) && Files.isRegularFile(file)) {
                return new OutsideProgram(name, file);
            }
        }
        String message = "program absent: " + name + " (Debian package " + debianPackage + ")";
        if (Boolean.getBoolean("trimwright.reference.required")) {
            throw new AssertionError(message + " (trimwright.reference.required is set)");
        }
        throw new TestAbortedException(message);
    }

    /** Standard output for that standard input, run in a folder that is its own to write in. */
    public byte[] run(Path folder, byte[] input, String... arguments) {
        List<String> command = new ArrayList<>(List.of(file.toString()));
        command.addAll(List.of(arguments));
        try {
            // Files instead of pipes: none can fill up while the other end waits.
            Path in = Files.write(folder.resolve(name + ".in"), input);
            Path out = folder.resolve(name + ".out");
            Process process = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectInput(in.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new AssertionError(name + " did not end within " + LONGEST_SECONDS + " s");
            }
            if (process.exitValue() != 0) {
                throw new AssertionError(name + " ended with " + process.exitValue());
            }
            return Files.readAllBytes(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(name + " was interrupted", e);
        }
    }
}
