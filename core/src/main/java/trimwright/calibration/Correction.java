package trimwright.calibration;

import java.util.List;

/**
 * What is taken off a boat's recorded channels.
 *
 * @param told estimates that are used, told ones only
 * @param upwash how upwash goes with wind and trim
 * @param leeway ratio of pressures that leeway is given for (-)
 */
public record Correction(String boat, List<Estimate> told, UpwashBasis upwash, double leeway) {
    public Correction {
        told = List.copyOf(told);
        if (!told.stream().allMatch(Estimate::isTold)) {
            throw new IllegalArgumentException("only what is told may be taken off");
        }
    }

    /** What it is (rad, -), 0 where it is not told. */
    public double get(Unknown unknown) {
        return told.stream()
                .filter(estimate -> estimate.unknown() == unknown)
                .mapToDouble(Estimate::value)
                .findFirst()
                .orElse(0);
    }

    /** Whether it is told. */
    public boolean has(Unknown unknown) {
        return told.stream().anyMatch(estimate -> estimate.unknown() == unknown);
    }
}
