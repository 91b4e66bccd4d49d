package trimwright.calibration;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * Unknowns of which the day tells some sum only, and not each: a direction in which their covariance, in units of what each
 * must be sure to, is longer than one.
 *
 * @param unknowns two or more, those with the largest part first
 * @param remedy what sailing would tell them apart
 */
public record Combination(List<Unknown> unknowns, Tie.Remedy remedy) {
    /** Share of the largest part from which an unknown counts as part of it (-), chosen. */
    private static final double PART = 0.3;

    public Combination {
        unknowns = List.copyOf(unknowns);
    }

    /** @param covariance of those unknowns, in their order */
    static List<Combination> of(List<Unknown> unknowns, RealMatrix covariance, boolean hasCourse) {
        RealMatrix scaled = covariance.copy();
        for (int k = 0; k < unknowns.size(); k++) {
            for (int m = 0; m < unknowns.size(); m++) {
                double units = unknowns.get(k).sure() * unknowns.get(m).sure();
                scaled.setEntry(k, m, (covariance.getEntry(k, m) + covariance.getEntry(m, k)) / 2 / units);
            }
        }
        EigenDecompositionSymmetric parts = new EigenDecompositionSymmetric(scaled);
        List<Combination> found = new ArrayList<>();
        for (int i = 0; i < unknowns.size(); i++) {
            if (parts.getEigenvalue(i) > 1) {
                List<Unknown> members = members(unknowns, parts.getEigenvector(i));
                if (members.size() > 1) {
                    found.add(new Combination(members, Tie.remedy(members, hasCourse)));
                }
            }
        }
        return found;
    }

    private static List<Unknown> members(List<Unknown> unknowns, RealVector direction) {
        double most = direction.getLInfNorm();
        List<Integer> members = new ArrayList<>();
        for (int k = 0; k < unknowns.size(); k++) {
            if (Math.abs(direction.getEntry(k)) >= PART * most) {
                members.add(k);
            }
        }
        members.sort((a, b) -> Double.compare(Math.abs(direction.getEntry(b)), Math.abs(direction.getEntry(a))));
        return members.stream().map(unknowns::get).toList();
    }
}
