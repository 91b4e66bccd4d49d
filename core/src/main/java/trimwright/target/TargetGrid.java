package trimwright.target;

import java.util.List;

/**
 * Winds and angles of a book, both rising.
 *
 * @param winds true wind speeds at 10 m (m/s), at least one
 * @param angles true wind angles from the course through the water (rad), in (0, pi); may be empty
 */
public record TargetGrid(List<Double> winds, List<Double> angles) {
    public TargetGrid {
        winds = List.copyOf(winds);
        angles = List.copyOf(angles);
        if (winds.isEmpty()) {
            throw new IllegalArgumentException("a target grid needs at least one wind");
        }
        requireRising(winds, "winds");
        requireRising(angles, "angles");
    }

    private static void requireRising(List<Double> values, String what) {
        for (int i = 1; i < values.size(); i++) {
            if (!(values.get(i) > values.get(i - 1))) {
                throw new IllegalArgumentException(what + " of a target grid must rise");
            }
        }
    }
}
