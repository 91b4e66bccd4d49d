package trimwright.start;

import java.util.List;

/**
 * Seconds to the line over wind and course.
 *
 * @param winds at 10 m (m/s), rising, two or more
 * @param angles from the course to the wind (rad), rising, two or more
 * @param times by wind, then angle
 */
public record LineBook(List<Double> winds, List<Double> angles, List<List<LineTimes>> times) {
    /** How far beyond the outer winds and angles the outer ones still serve (m/s, rad): chosen, half a cell. */
    private static final double WIND_BEYOND = 1;

    private static final double ANGLE_BEYOND = Math.toRadians(15);

    public LineBook {
        winds = List.copyOf(winds);
        angles = List.copyOf(angles);
        times = times.stream().map(List::copyOf).toList();
        int across = angles.size();
        if (winds.size() < 2 || across < 2 || times.size() != winds.size()) {
            throw new IllegalArgumentException("times to a line need two winds and two angles or more");
        }
        if (times.stream().anyMatch(row -> row.size() != across)) {
            throw new IllegalArgumentException("times to a line need a cell for each wind and angle");
        }
    }

    /**
     * Seconds to the line at full power from now.
     *
     * @param wind at 10 m (m/s)
     * @param angle from the course to the wind (rad), tack-free
     * @param speed now (m/s)
     * @param metres along the course to the line
     * @return NaN outside the book
     */
    public Spread to(double wind, double angle, double speed, double metres) {
        if (!isWithin(winds, wind, WIND_BEYOND) || !isWithin(angles, angle, ANGLE_BEYOND) || !(metres >= 0)) {
            return new Spread(Double.NaN, Double.NaN, Double.NaN);
        }
        int i = cell(winds, wind);
        int j = cell(angles, angle);
        double s = share(winds, i, wind);
        double t = share(angles, j, angle);
        Spread low = times.get(i)
                .get(j)
                .to(speed, metres)
                .toward(times.get(i).get(j + 1).to(speed, metres), t);
        Spread high = times.get(i + 1)
                .get(j)
                .to(speed, metres)
                .toward(times.get(i + 1).get(j + 1).to(speed, metres), t);
        return low.toward(high, s);
    }

    private static boolean isWithin(List<Double> nodes, double value, double beyond) {
        return value >= nodes.get(0) - beyond && value <= nodes.get(nodes.size() - 1) + beyond;
    }

    private static int cell(List<Double> nodes, double value) {
        int i = 0;
        while (i < nodes.size() - 2 && value >= nodes.get(i + 1)) {
            i++;
        }
        return i;
    }

    private static double share(List<Double> nodes, int i, double value) {
        return Math.max(0, Math.min(1, (value - nodes.get(i)) / (nodes.get(i + 1) - nodes.get(i))));
    }
}
