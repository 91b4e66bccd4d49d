package trimwright.weather;

import java.util.List;

/**
 * The wake of one wing: sections that the mean wind carries away, each a bell-shaped loss as {@link GaussianWake} has it.
 *
 * <p>The published model knows a disc that holds back the air. Drag uses it as it stands, on a disc of the wing's area. Lift
 * turns the air: the same bell on the disc whose diameter is the span with its image in the sea gives the far downwash of
 * lifting-line theory where it begins (a test holds the two together), and then spreads like the loss; that use is chosen.
 * Loss is counted at the height of the wing's middle only. Wakes add up.
 */
public final class WakeTrail {
    /** Thrust coefficient above which the model has no meaning (-). */
    private static final double MOST = 0.95;

    private final List<WakeSection> sections;

    /** @param sections in the order in which they were left, oldest first */
    public WakeTrail(List<WakeSection> sections) {
        this.sections = List.copyOf(sections);
    }

    /**
     * What the wake adds to the wind.
     *
     * @param north place (m)
     * @param east place (m)
     * @param time (s)
     * @param wind mean wind that carries the wake
     * @param growth see {@link GaussianWake#growth}
     */
    public AirVelocity at(double north, double east, double time, AirVelocity wind, double growth) {
        int best = -1;
        double bestShare = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < sections.size(); i++) {
            WakeSection a = sections.get(i);
            WakeSection b = sections.get(i + 1);
            double an = a.north() + wind.north() * (time - a.time());
            double ae = a.east() + wind.east() * (time - a.time());
            double sn = b.north() + wind.north() * (time - b.time()) - an;
            double se = b.east() + wind.east() * (time - b.time()) - ae;
            double dn = north - an;
            double de = east - ae;
            double share = Math.max(0, Math.min(1, (dn * sn + de * se) / (sn * sn + se * se + 1e-9)));
            double square = StrictMath.pow(dn - share * sn, 2) + StrictMath.pow(de - share * se, 2);
            if (square < least) {
                least = square;
                best = i;
                bestShare = share;
            }
        }
        boolean aheadOfTheWing = best == sections.size() - 2 && bestShare >= 1;
        if (best < 0 || aheadOfTheWing) {
            return new AirVelocity(0, 0);
        }
        WakeSection left = sections.get(bestShare < 0.5 ? best : best + 1);
        double age = time
                - sections.get(best).time()
                - bestShare
                        * (sections.get(best + 1).time() - sections.get(best).time());
        return lossOf(left, left.speed() * age, least, growth);
    }

    private static AirVelocity lossOf(WakeSection left, double distance, double square, double growth) {
        double slowed = loss(left.drag(), Math.sqrt(4 * left.area() / Math.PI), distance, square, growth);
        // Wing and image together: twice the lift on a disc of twice the height.
        double turned =
                loss(2 * Math.abs(left.lift()), 2 * left.height(), distance, square, growth) * Math.signum(left.lift());
        double cos = StrictMath.cos(left.towards());
        double sin = StrictMath.sin(left.towards());
        return new AirVelocity(
                left.speed() * (-slowed * cos + turned * sin), left.speed() * (-slowed * sin - turned * cos));
    }

    private static double loss(double force, double diameter, double distance, double square, double growth) {
        double thrust = Math.min(MOST, force / (Math.PI * diameter * diameter / 4));
        double width = GaussianWake.width(distance, diameter, thrust, growth);
        return GaussianWake.lossOnAxis(distance, diameter, thrust, growth)
                * StrictMath.exp(-square / (2 * width * width));
    }
}
