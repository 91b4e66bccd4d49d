package trimwright.layer;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.opentest4j.TestAbortedException;

/**
 * Debian's {@code xfoil} as a separate program to compare with. Where it is not installed the test is skipped, or fails if
 * {@code trimwright.reference.required} is true.
 */
final class XfoilProgram {
    private XfoilProgram() {}

    /** Lift and drag by angle of attack in half degrees; angles at which the program did not converge are absent. */
    static Map<Double, double[]> polar(Path folder, String naca, double reynolds, double lastDegrees) {
        String commands = String.join(
                "\n",
                "PLOP",
                "G F",
                "",
                "NACA " + naca,
                "PPAR",
                "N 200",
                "",
                "",
                "OPER",
                "ITER 200",
                "VPAR",
                "N 9.0",
                "",
                "VISC " + reynolds,
                "PACC",
                "polar.txt",
                "",
                "ASEQ 0 " + lastDegrees + " 0.5",
                "PACC",
                "",
                "QUIT",
                "");
        try {
            Path polar = folder.resolve("polar.txt");
            Files.deleteIfExists(polar);
            Path input = Files.writeString(folder.resolve("commands.txt"), commands, StandardCharsets.US_ASCII);
            ProcessBuilder xfoil = new ProcessBuilder("xfoil").directory(folder.toFile());
            xfoil.environment().put("LD_PRELOAD", trapless(folder).toString());
            run(xfoil, input);
            Map<Double, double[]> points = new TreeMap<>();
            for (String line : Files.readAllLines(polar, StandardCharsets.US_ASCII)) {
                String[] cells = line.trim().split(" +");
                if (cells.length >= 7 && cells[0].matches("[0-9]+\\.[0-9]+")) {
                    points.put(
                            Double.valueOf(cells[0]),
                            new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2])});
                }
            }
            return points;
        } catch (IOException e) {
            throw absent(e);
        }
    }

    /** The program ends by a floating-point trap when graphics are off; this small library takes the trap away. */
    private static Path trapless(Path folder) throws IOException {
        Path source = Files.writeString(folder.resolve("trap.c"), "void _gfortran_set_fpe(int x) { (void)x; }\n");
        Path library = folder.resolve("trap.so");
        run(
                new ProcessBuilder("gcc", "-shared", "-fPIC", "-o", library.toString(), source.toString()),
                Path.of("/dev/null"));
        return library;
    }

    private static void run(ProcessBuilder program, Path input) throws IOException {
        Process process = program.redirectInput(input.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            if (!process.waitFor(120, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IOException(program.command() + " took more than two minutes");
            }
        } catch (InterruptedException e) {
            process.destroyForcibly();
            throw new UncheckedIOException(new IOException(program.command() + " was interrupted", e));
        }
    }

    private static RuntimeException absent(IOException e) {
        String message = "xfoil or gcc absent: " + e.getMessage();
        if (Boolean.getBoolean("trimwright.reference.required")) {
            throw new AssertionError(message + " (trimwright.reference.required is set)", e);
        }
        return new TestAbortedException(message);
    }
}
