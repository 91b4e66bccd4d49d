package trimwright.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Setup;

/**
 * The polar of {@link LayerBenchmark#polar()} by Debian's {@code xfoil} as a process of its own, start and end included, with as many
 * panels. Compare the clock's times of the two; needs the packages xfoil and gcc.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class OtherPolarBenchmark extends Measured {
    private static final String COMMANDS = """
            PLOP
            G F

            NACA 0012
            PPAR
            N 160


            OPER
            ITER 200
            VPAR
            N 9.0

            VISC 1000000
            PACC
            polar.txt

            ASEQ 0 16 1
            PACC

            QUIT
            """;

    private Path folder = Path.of("");

    /** The program ends by a floating-point trap when graphics are off; a small library takes the trap away. */
    @Setup
    public void prepare() throws IOException, InterruptedException {
        folder = Files.createTempDirectory("polar");
        folder.toFile().deleteOnExit();
        Files.writeString(folder.resolve("in"), COMMANDS, StandardCharsets.US_ASCII);
        Files.writeString(
                folder.resolve("trap.c"), "void _gfortran_set_fpe(int x) { (void)x; }\n", StandardCharsets.US_ASCII);
        run("gcc", "-shared", "-nostdlib", "-fPIC", "-o", "trap.so", "trap.c");
    }

    /** Number of lines of the polar. */
    @Benchmark
    public int polar() throws IOException, InterruptedException {
        Path polar = folder.resolve("polar.txt");
        Files.deleteIfExists(polar); // the program would append to it
        run("xfoil");
        return Files.readAllLines(polar, StandardCharsets.US_ASCII).size();
    }

    private void run(String... command) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(List.of(command)))
                .directory(folder.toFile())
                .redirectInput(folder.resolve("in").toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        if (command[0].equals("xfoil")) {
            builder.environment().put("LD_PRELOAD", folder.resolve("trap.so").toString());
        }
        if (builder.start().waitFor() != 0) {
            throw new IllegalStateException(command[0] + " did not end well");
        }
    }
}
