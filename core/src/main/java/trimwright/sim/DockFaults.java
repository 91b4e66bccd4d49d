package trimwright.sim;

import java.util.ArrayList;
import java.util.List;
import trimwright.chance.RandomStream;

/**
 * What is wrong with a boat at the dock, beside noise: zeros that are a little or plainly off, sensors that do not work or count the other
 * way, controls slower than her file says. Sizes chosen: a good gauge is within a quarter of a degree, a bad one off by one and a half or
 * more.
 *
 * @param offsets zeros and factors
 * @param flapMiddle added to the flap angle at half height (rad)
 * @param camberRate of the flap, over what the boat file says (-)
 * @param twistRate the same of twist (-)
 * @param plain what does not work at all, at most one a gauge
 */
public record DockFaults(
        SensorFaults offsets, double flapMiddle, double camberRate, double twistRate, List<Plain> plain) {
    public DockFaults {
        plain = List.copyOf(plain);
    }

    /** A gauge that does not work. */
    public record Plain(Gauge gauge, Kind kind) {}

    /** What may not work. */
    public enum Gauge {
        ROLL,
        PITCH,
        HEADING,
        WIND,
        CAMBER,
        TWIST,
        FLAP_MIDDLE,
        SHEET,
        SHEET_LOAD
    }

    /** How it does not work. */
    public enum Kind {
        /** It says nothing. */
        DEAD,
        /** It says what it said first. */
        FROZEN,
        /** It counts the other way; of the wind, its angle. */
        SIGN,
        /** Of the camber: it says what the twist's should, and the other way round. */
        SWAPPED,
        /** Of the wind: it stands where the boat file says that it does not. */
        OTHER_MOUNT
    }

    private static final List<Plain> KNOWN = List.of(
            new Plain(Gauge.ROLL, Kind.DEAD),
            new Plain(Gauge.ROLL, Kind.FROZEN),
            new Plain(Gauge.ROLL, Kind.SIGN),
            new Plain(Gauge.PITCH, Kind.FROZEN),
            new Plain(Gauge.HEADING, Kind.FROZEN),
            new Plain(Gauge.WIND, Kind.DEAD),
            new Plain(Gauge.WIND, Kind.FROZEN),
            new Plain(Gauge.WIND, Kind.SIGN),
            new Plain(Gauge.WIND, Kind.OTHER_MOUNT),
            new Plain(Gauge.CAMBER, Kind.DEAD),
            new Plain(Gauge.CAMBER, Kind.FROZEN),
            new Plain(Gauge.CAMBER, Kind.SIGN),
            new Plain(Gauge.CAMBER, Kind.SWAPPED),
            new Plain(Gauge.TWIST, Kind.DEAD),
            new Plain(Gauge.TWIST, Kind.FROZEN),
            new Plain(Gauge.TWIST, Kind.SIGN),
            new Plain(Gauge.FLAP_MIDDLE, Kind.DEAD),
            new Plain(Gauge.SHEET, Kind.DEAD),
            new Plain(Gauge.SHEET, Kind.FROZEN),
            new Plain(Gauge.SHEET, Kind.SIGN),
            new Plain(Gauge.SHEET_LOAD, Kind.DEAD),
            new Plain(Gauge.SHEET_LOAD, Kind.FROZEN));

    /** Everything that a gauge may do. */
    public static List<Plain> listKnown() {
        return KNOWN;
    }

    private static final double GOOD = Math.toRadians(0.12);

    /** Two gauges that do not work, on other gauges two zeros that are plainly off, and controls up to a third slower. */
    public static DockFaults draw(long seed) {
        RandomStream random = RandomStream.of(seed, "faults at the dock");
        List<Plain> plain = new ArrayList<>();
        while (plain.size() < 2) {
            Plain one = KNOWN.get((int) (random.uniform() * KNOWN.size()));
            if (plain.stream().noneMatch(other -> touches(one, other.gauge()) || touches(other, one.gauge()))) {
                plain.add(one);
            }
        }
        double[] zeros = new double[7];
        for (int i = 0; i < zeros.length; i++) {
            zeros[i] = GOOD * Math.max(-2, Math.min(2, random.normal()));
        }
        for (int i = 0; i < 2; i++) {
            int which = (int) (random.uniform() * 6);
            zeros[which] = Math.toRadians(random.uniform(1.5, 3)) * (random.uniform() < 0.5 ? -1 : 1);
        }
        SensorFaults offsets = new SensorFaults(
                new SensorFaults.WindFault(
                        random.uniform() < 0.5 ? 0 : Math.toRadians(random.uniform(4, 7)),
                        1 + 0.02 * random.normal(),
                        0,
                        random.uniform(0.2, 0.6)),
                new SensorFaults.AttitudeFault(Math.toRadians(random.normal()), zeros[0], zeros[1]),
                new SensorFaults.WingFault(
                        zeros[2], zeros[3], zeros[4], random.uniform() < 0.5 ? 1.01 : random.uniform(1.12, 1.2), 0),
                6);
        return new DockFaults(offsets, zeros[5], random.uniform(0.65, 1), random.uniform(0.65, 1), plain);
    }

    private static boolean touches(Plain one, Gauge gauge) {
        return one.gauge() == gauge || (one.kind() == Kind.SWAPPED && gauge == Gauge.TWIST);
    }
}
