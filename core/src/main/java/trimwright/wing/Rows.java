package trimwright.wing;

/** Rows of numbers, each allocated by itself: many times as quick as asking for all at once. */
final class Rows {
    private Rows() {}

    /** So many rows of so many zeros. */
    static double[][] of(int rows, int length) {
        double[][] row = new double[rows][];
        for (int k = 0; k < rows; k++) {
            row[k] = new double[length];
        }
        return row;
    }
}
