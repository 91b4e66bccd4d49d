package trimwright.wing;

import java.util.Arrays;
import java.util.Locale;
import trimwright.air.AirState;

/** Prints the median time of a warm wing solve: run by hand. */
final class WingTiming {
    private WingTiming() {}

    public static void main(String[] args) {
        int strips = Integer.getInteger("strips", 40);
        Wing wing = Wing.of(TestWings.real(), strips);
        PlacedWing placed = wing.placedAt(0.03, 2.5);
        double[] warm = new double[20_000];
        double[] derivatives = new double[warm.length];
        double[] place = new double[warm.length];
        long iterations = 0;
        double sink = 0;
        for (int round = 0; round < 3; round++) {
            WingSolved last = null;
            iterations = 0;
            for (int i = 0; i < warm.length; i++) {
                double t = i * 0.01;
                StripAir air = StripAir.uniform(
                        strips, 15 + Math.sin(t), Math.toRadians(20 + 2 * Math.sin(1.3 * t)), AirState.STANDARD);
                WingSetting setting =
                        new WingSetting(Math.toRadians(12 + Math.sin(2 * t)), 0.3 + 0.02 * Math.sin(t), 0.15, 0.5);
                long a = System.nanoTime();
                WingAnswer answer = placed.solve(air, setting, last);
                long b = System.nanoTime();
                last = (WingSolved) answer;
                sink += placed.sensitivity(air, setting, last)
                        .forceBy(WingControl.SHEET)
                        .x();
                long c = System.nanoTime();
                sink += wing.placedAt(0.03 + 1e-6 * i, 2.5).heel();
                long d = System.nanoTime();
                warm[i] = (b - a) * 1e-3;
                derivatives[i] = (c - b) * 1e-3;
                place[i] = (d - c) * 1e-3;
                iterations += last.iterations();
            }
        }
        System.out.printf(
                Locale.ROOT,
                "30 strips: warm solve %.1f us (%.2f iterations), derivatives %.1f us, placing %.1f us (%s)%n",
                median(warm),
                iterations / (double) warm.length,
                median(derivatives),
                median(place),
                sink != 0);
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
