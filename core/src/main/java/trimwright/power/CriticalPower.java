package trimwright.power;

import trimwright.boat.Handling;

/**
 * What one rested person can give for how long: a power kept up for long, a store of work above it, a peak. Monod and Scherrer's
 * hyperbola with Morton's peak: P = CP + W' / (t + k), k = W' / (peak - CP); the store fills again below CP as Skiba and others
 * (2015) have it. Holds for efforts of seconds to some 15 minutes; leaves out heat, food and the day's fatigue but for
 * {@link #atFitness}. Sources: MONOD-SCHERRER, MORTON-1996, SKIBA-2015 in docs/sources.md.
 *
 * @param power kept up for long (W), positive
 * @param store work above it when rested (J), positive
 * @param peak in the first instant of an all-out effort (W), above {@code power}; infinite for the plain hyperbola
 */
public record CriticalPower(double power, double store, double peak) {
    public CriticalPower {
        if (!(power > 0) || !(store > 0) || !(peak > power)) {
            throw new IllegalArgumentException("power and store are above 0 and the peak above the power, not " + power
                    + " W, " + store + " J, " + peak + " W");
        }
    }

    /** One of the grinders of a boat file. */
    public static CriticalPower of(Handling.Grinders grinders) {
        return new CriticalPower(grinders.criticalPower(), grinders.workAbove(), grinders.peakPower());
    }

    /**
     * From two all-out efforts of even power.
     *
     * @param shortPower mean power of the shorter one (W)
     * @param shortSeconds its length (s)
     * @param longPower mean power of the longer one (W)
     * @param longSeconds its length (s)
     * @throws IllegalArgumentException where the two do not lie on a falling hyperbola
     */
    public static CriticalPower ofTwoEfforts(
            double shortPower, double shortSeconds, double longPower, double longSeconds) {
        double power = (longPower * longSeconds - shortPower * shortSeconds) / (longSeconds - shortSeconds);
        return new CriticalPower(power, (shortPower - power) * shortSeconds, Double.POSITIVE_INFINITY);
    }

    /** The same person at a share of full fitness (-), above 0: every figure by that share. Chosen, the simplest rule. */
    public CriticalPower atFitness(double share) {
        return new CriticalPower(share * power, share * store, share * peak);
    }

    /** Most even power over a time (W) when rested. */
    public double most(double seconds) {
        return power + store / (seconds + lead());
    }

    /** How long a power (W) can be held when rested (s): infinite up to the critical power, nothing from the peak on. */
    public double secondsAt(double held) {
        if (held <= power) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.max(0, store / (held - power) - lead());
    }

    /** Least time in which a work (J) can be done when rested (s). */
    public double secondsFor(double work) {
        // (CP + W' / (t + k)) t = E, the positive root
        double k = lead();
        double b = power * k + store - work;
        return (-b + Math.sqrt(b * b + 4 * power * work * k)) / (2 * power);
    }

    /**
     * What is left of the store after a time at a power.
     *
     * @param left in the store before (J), 0 to {@link #store}
     * @param held power meanwhile (W)
     * @param seconds how long
     * @return in the store after (J); negative where more was asked than there was
     */
    public double left(double left, double held, double seconds) {
        if (held >= power) {
            return left - (held - power) * seconds;
        }
        return store - (store - left) * StrictMath.exp(-(power - held) * seconds / store);
    }

    /**
     * How long until the store is full again to a share of it.
     *
     * @param left in the store before (J), not above {@link #store}
     * @param held power meanwhile (W)
     * @param share of the store (-), below 1
     * @return seconds; infinite where the power held lets nothing back
     */
    public double secondsToRefill(double left, double held, double share) {
        double missing = (store - left) / ((1 - share) * store);
        if (missing <= 1) {
            return 0;
        }
        return held < power ? store / (power - held) * StrictMath.log(missing) : Double.POSITIVE_INFINITY;
    }

    /** Morton's k (s): how much earlier than at time zero the hyperbola would be infinite. */
    private double lead() {
        return store / (peak - power);
    }
}
