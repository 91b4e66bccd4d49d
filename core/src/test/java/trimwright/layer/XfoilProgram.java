package trimwright.layer;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import trimwright.evidence.OutsideProgram;

/** Debian's {@code xfoil} as a separate program to compare with. */
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
        OutsideProgram.get("xfoil", "xfoil");
        OutsideProgram.get("env", "coreutils")
                .run(folder, commands.getBytes(US_ASCII), "LD_PRELOAD=" + trapless(folder), "xfoil");
        Map<Double, double[]> points = new TreeMap<>();
        try {
            Path polar = folder.resolve("polar.txt");
            for (String line : Files.readAllLines(polar, US_ASCII)) {
                String[] cells = line.trim().split(" +");
                if (cells.length >= 7 && cells[0].matches("[0-9]+\\.[0-9]+")) {
                    points.put(
                            Double.valueOf(cells[0]),
                            new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2])});
                }
            }
            Files.delete(polar); // the program would append to it
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return points;
    }

    /** The program ends by a floating-point trap when graphics are off; this small library takes the trap away. */
    private static Path trapless(Path folder) {
        byte[] source = "void _gfortran_set_fpe(int x) { (void)x; }\n".getBytes(US_ASCII);
        Path library = folder.resolve("trap.so");
        OutsideProgram.get("gcc", "gcc")
                .run(folder, source, "-shared", "-nostdlib", "-fPIC", "-x", "c", "-o", library.toString(), "-");
        return library;
    }
}
