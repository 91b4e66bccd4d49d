package trimwright.layer;

/**
 * The interval in which a layer becomes turbulent: laminar up to the place where the largest wave has grown by the critical
 * exponent, turbulent from there on.
 */
final class Transition {
    /** Parts of the interval searched for the place: a station behind is turbulent and would show no growth. */
    private static final int PARTS = 8;

    private Transition() {}

    /**
     * Share of the interval, 0 to 1, at which waves reach the critical exponent; NaN if they do not.
     *
     * @param b the later station, whatever its kind; only its thicknesses and speed count
     */
    static double place(Station a, Station b, Dual xa, Dual xb, double critical, double reynolds) {
        double low = 0;
        double atLow = a.stress().value - critical;
        for (int i = 1; i <= PARTS; i++) {
            double high = (double) i / PARTS;
            double atHigh = excess(a, b, xa, xb, high, critical, reynolds);
            if (atHigh >= 0) {
                return root(a, b, xa, xb, critical, reynolds, new double[] {low, atLow, high, atHigh});
            }
            low = high;
            atLow = atHigh;
        }
        return Double.NaN;
    }

    private static double root(
            Station a, Station b, Dual xa, Dual xb, double critical, double reynolds, double[] bracket) {
        double low = bracket[0];
        double atLow = bracket[1];
        double high = bracket[2];
        double atHigh = bracket[3];
        double share = high;
        for (int i = 0; i < 60 && high - low > 1e-13; i++) {
            // Falling back to halving keeps the false position from creeping.
            share = i % 3 == 2 ? 0.5 * (low + high) : low + (high - low) * atLow / (atLow - atHigh);
            double at = excess(a, b, xa, xb, share, critical, reynolds);
            if (Math.abs(at) < 1e-12) {
                break;
            }
            if (at >= 0) {
                high = share;
                atHigh = at;
            } else {
                low = share;
                atLow = at;
            }
        }
        return share;
    }

    /** The same as {@link #excess(Station, Station, Dual, Dual, Dual, double, double)} without derivatives, which the search has no use for. */
    private static double excess(
            Station a, Station b, Dual xa, Dual xb, double share, double critical, double reynolds) {
        double theta = between(a.theta(), b.theta(), share);
        double h = between(a.displacement(), b.displacement(), share) / theta;
        double reTheta = between(a.speed(), b.speed(), share) * theta * reynolds;
        double growth = LaminarLaw.growth(Dual.constant(h), Dual.constant(reTheta)).value / theta;
        double before = a.growth().value;
        double mean = Math.sqrt(0.5 * (before * before + growth * growth));
        return mean * share * (xb.value - xa.value) + a.stress().value - critical;
    }

    private static double between(Dual first, Dual second, double share) {
        return first.value + (second.value - first.value) * share;
    }

    private static Dual excess(Station a, Station b, Dual xa, Dual xb, Dual share, double critical, double reynolds) {
        Station at = laminarAt(a, b, share, critical, reynolds);
        return Interval.growth(a, at)
                .times(share)
                .times(xb.minus(xa))
                .plus(a.stress())
                .minus(critical);
    }

    private static Station laminarAt(Station a, Station b, Dual share, double critical, double reynolds) {
        return Station.of(
                Regime.LAMINAR,
                reynolds,
                Dual.constant(critical),
                Dual.between(a.theta(), b.theta(), share),
                Dual.between(a.displacement(), b.displacement(), share),
                Dual.between(a.speed(), b.speed(), share));
    }

    /**
     * Share of the interval where waves come nearest to the critical exponent, for a state in which they do not reach it though
     * the later station is turbulent.
     */
    private static double nearest(Station a, Station b, Dual xa, Dual xb, double critical, double reynolds) {
        double[] at = new double[PARTS + 1];
        at[0] = a.stress().value - critical;
        int best = 1;
        for (int i = 1; i <= PARTS; i++) {
            at[i] = excess(a, b, xa, xb, (double) i / PARTS, critical, reynolds);
            best = at[i] > at[best] ? i : best;
        }
        if (best == PARTS) {
            return 1;
        }
        // Top of the parabola through three parts, so that the place moves smoothly with the state.
        double bend = at[best - 1] - 2 * at[best] + at[best + 1];
        double off = bend < 0 ? 0.5 * (at[best - 1] - at[best + 1]) / bend : 0;
        return (best + Math.min(0.5, Math.max(-0.5, off))) / PARTS;
    }

    /** Share of an interval at which the layer of a finished state becomes turbulent. */
    static double share(Station a, Station b, Dual xa, Dual xb, Residuals residuals) {
        double found = place(a, b, xa, xb, residuals.critical(), residuals.reynolds());
        return Double.isNaN(found) ? nearest(a, b, xa, xb, residuals.critical(), residuals.reynolds()) : found;
    }

    /** What must vanish over the interval: momentum, energy, lag. */
    static Dual[] residual(Station a, Station b, Dual xa, Dual xb, double critical, double reynolds) {
        double found = place(a, b, xa, xb, critical, reynolds);
        double place = Double.isNaN(found) ? nearest(a, b, xa, xb, critical, reynolds) : found;
        Dual zero = excess(a, b, xa, xb, Dual.constant(place), critical, reynolds);
        double step = 1e-6;
        double rise = (excess(a, b, xa, xb, place + step, critical, reynolds)
                        - excess(a, b, xa, xb, place - step, critical, reynolds))
                / (2 * step);
        Dual share = rise > 0 && !Double.isNaN(found) ? Dual.implicit(place, zero, rise) : Dual.constant(place);
        Dual x = Dual.between(xa, xb, share);
        Station laminar = laminarAt(a, b, share, critical, reynolds);
        Dual[] before = Interval.laminar(a, laminar, xa, x);
        Dual[] after = Interval.turbulent(laminar.becomeTurbulent(reynolds), b, x, xb);
        return new Dual[] {before[0].plus(after[0]), before[1].plus(after[1]), after[2]};
    }
}
