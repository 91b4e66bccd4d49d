package trimwright.layer;

/**
 * What must vanish between two stations: balance of momentum, balance of kinetic energy, and growth of waves (laminar) or lag
 * of shear stress (turbulent). Logarithmic differences, so that the first intervals from a stagnation point are exact for
 * similar flows.
 *
 * <p>Source: DRELA-GILES-1987. Differences lean to the later station where the shape changes fast, as at transition.
 */
final class Interval {
    /** Rate at which shear stress follows. */
    private static final double LAG = 5.6;

    /** Share of the stress's own decay that is left in a wake. */
    private static final double WAKE_DECAY = 0.9;

    private final Station a;
    private final Station b;
    private final Dual xa;
    private final Dual xb;

    /** Logarithms of what speed and distance grow by; mean shape factor; weight of the later station. */
    private final Dual faster;

    private final Dual farther;
    private final Dual h;
    private final Dual share;

    private Interval(Station a, Station b, Dual xa, Dual xb) {
        this.a = a;
        this.b = b;
        this.xa = xa;
        this.xb = xb;
        faster = b.speed().over(a.speed()).log();
        farther = xb.over(xa).log();
        h = Dual.mean(a.h(), b.h());
        share = later(a, b);
    }

    /** Momentum, energy, waves. */
    static Dual[] laminar(Station a, Station b, Dual xa, Dual xb) {
        Dual waves = b.stress().minus(a.stress()).minus(growth(a, b).times(xb.minus(xa)));
        Interval interval = new Interval(a, b, xa, xb);
        return new Dual[] {interval.momentum(), interval.energy(), waves};
    }

    /** Momentum, energy, lag. */
    static Dual[] turbulent(Station a, Station b, Dual xa, Dual xb) {
        Interval interval = new Interval(a, b, xa, xb);
        return new Dual[] {interval.momentum(), interval.energy(), interval.lag()};
    }

    /** Mean growth of the exponent per length. */
    static Dual growth(Station a, Station b) {
        Dual square = a.growth().squared().plus(b.growth().squared()).times(0.5);
        return square.value > 0 ? square.root() : square;
    }

    private Dual momentum() {
        Dual grown = b.theta().over(a.theta()).log();
        Dual result = grown.plus(h.plus(2).times(faster));
        if (b.regime() == Regime.WAKE) {
            return result;
        }
        Dual reTheta = Dual.mean(a.reTheta(), b.reTheta());
        Dual middle =
                b.regime() == Regime.LAMINAR ? LaminarLaw.friction(h, reTheta) : TurbulentLaw.friction(h, reTheta);
        Dual ends =
                Dual.mean(a.friction().times(xa.over(a.theta())), b.friction().times(xb.over(b.theta())));
        Dual centre = middle.times(Dual.mean(xa, xb)).over(Dual.mean(a.theta(), b.theta()));
        return result.minus(Dual.mean(ends, centre).times(0.5).times(farther));
    }

    private Dual energy() {
        Dual grown = b.energyShape().over(a.energyShape()).log();
        Dual gain = Dual.between(loss(a, xa), loss(b, xb), share);
        return grown.plus(h.from(1).times(faster)).plus(gain.times(farther));
    }

    private static Dual loss(Station s, Dual x) {
        return s.friction().times(0.5).minus(s.dissipation()).times(x.over(s.theta()));
    }

    private Dual lag() {
        double decay = b.regime() == Regime.WAKE ? WAKE_DECAY : 1;
        Dual thickness = Dual.mean(a.thickness(), b.thickness());
        Dual length = xb.minus(xa).over(thickness);
        Dual rate = Dual.mean(a.slip(), b.slip()).plus(1).under(LAG * 1.333);
        Dual stress = Dual.between(a.stress(), b.stress(), share);
        Dual tends = Dual.between(a.equilibriumStress(), b.equilibriumStress(), share);
        Dual friction = Dual.between(a.friction(), b.friction(), share);
        Dual shape = Dual.between(a.h(), b.h(), share);
        Dual wallShape = Station.wallShape(b.regime(), shape, Dual.mean(a.reTheta(), b.reTheta()));
        // Edge speed's gradient that keeps a layer in equilibrium, times length.
        Dual steady = friction.times(0.5)
                .minus(wallShape
                        .over(shape)
                        .times(1 / (TurbulentLaw.G_A * decay))
                        .squared())
                .times(1 / TurbulentLaw.G_B)
                .over(Dual.mean(a.displacement(), b.displacement()))
                .times(xb.minus(xa));
        return rate.times(tends.minus(stress.times(decay)))
                .times(length)
                .minus(b.stress().over(a.stress()).log().times(2))
                .plus(steady.minus(faster).times(2));
    }

    /** Weight of the later station: a half where the shape is steady, toward 1 where it changes fast. */
    private static Dual later(Station a, Station b) {
        double steepness = b.regime() == Regime.WAKE ? 1 : 5;
        Dual change = b.h().minus(1).over(a.h().minus(1)).log();
        return change.squared()
                .times(-steepness)
                .over(b.h().squared())
                .exp()
                .times(-0.5)
                .plus(1);
    }
}
