package trimwright.layer;

/**
 * What an interval between two stations makes of changes: change of stress, momentum thickness and speed at the later station by
 * the changes at the earlier one, by the change of the flow displaced at the later one, and by the shift of the stagnation point.
 */
final class StationChange {
    /** Numbers of the three in the arrays here. */
    static final int STRESS = 0;

    static final int THETA = 1;
    static final int SPEED = 2;

    /** By the four unknowns of the earlier station. */
    final double[][] earlier = new double[3][4];

    final double[] displaced = new double[3];
    final double[] shift = new double[3];
    final double[] constant = new double[3];

    /**
     * Of an interval.
     *
     * @param later residuals with their derivatives by the later station's unknowns and the shift
     * @param before the same by the earlier station's unknowns
     */
    static StationChange of(Dual[] later, Dual[] before) {
        StationChange change = first(later);
        double[][] inverse = inverse(later);
        for (int i = 0; i < 3; i++) {
            for (int v = 0; v < 4; v++) {
                double sum = 0;
                for (int q = 0; q < 3; q++) {
                    sum -= inverse[i][q] * before[q].slope(v);
                }
                change.earlier[i][v] = sum;
            }
        }
        return change;
    }

    /** Of a path's first station, before which there is none. */
    static StationChange first(Dual[] later) {
        StationChange change = new StationChange();
        double[][] inverse = inverse(later);
        for (int i = 0; i < 3; i++) {
            for (int q = 0; q < 3; q++) {
                change.displaced[i] -= inverse[i][q] * later[q].slope(Unknowns.DISPLACED);
                change.shift[i] -= inverse[i][q] * later[q].slope(Unknowns.SHIFT);
                change.constant[i] -= inverse[i][q] * later[q].value;
            }
        }
        return change;
    }

    /** Inverse of the derivatives of three residuals by stress, momentum thickness and speed. */
    private static double[][] inverse(Dual[] r) {
        double[][] m = new double[3][3];
        for (int q = 0; q < 3; q++) {
            m[q][STRESS] = r[q].slope(Unknowns.STRESS);
            m[q][THETA] = r[q].slope(Unknowns.THETA);
            m[q][SPEED] = r[q].slope(Unknowns.SPEED);
        }
        double[][] inverse = new double[3][3];
        for (int i = 0; i < 3; i++) {
            int b = (i + 1) % 3;
            int c = (i + 2) % 3;
            for (int j = 0; j < 3; j++) {
                int e = (j + 1) % 3;
                int f = (j + 2) % 3;
                inverse[j][i] = m[b][e] * m[c][f] - m[b][f] * m[c][e];
            }
        }
        double determinant = m[0][0] * inverse[0][0] + m[0][1] * inverse[1][0] + m[0][2] * inverse[2][0];
        for (double[] row : inverse) {
            for (int j = 0; j < 3; j++) {
                row[j] /= determinant;
            }
        }
        return inverse;
    }
}
