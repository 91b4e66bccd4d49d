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

    private Interval() {}

    /** Momentum, energy, waves. */
    static Dual[] laminar(Station a, Station b, Dual xa, Dual xb) {
        Dual waves = b.stress().minus(a.stress()).minus(growth(a, b).times(xb.minus(xa)));
        return new Dual[] {momentum(a, b, xa, xb), energy(a, b, xa, xb), waves};
    }

    /** Momentum, energy, lag. */
    static Dual[] turbulent(Station a, Station b, Dual xa, Dual xb) {
        return new Dual[] {momentum(a, b, xa, xb), energy(a, b, xa, xb), lag(a, b, xa, xb)};
    }

    /** Mean growth of the exponent per length. */
    static Dual growth(Station a, Station b) {
        Dual square = a.growth().squared().plus(b.growth().squared()).times(0.5);
        return square.value > 0 ? square.root() : square;
    }

    private static Dual momentum(Station a, Station b, Dual xa, Dual xb) {
        Dual grown = b.theta().over(a.theta()).log();
        Dual faster = b.speed().over(a.speed()).log();
        Dual shape = Dual.mean(a.h(), b.h()).plus(2);
        Dual result = grown.plus(shape.times(faster));
        if (b.regime() == Regime.WAKE) {
            return result;
        }
        Dual h = Dual.mean(a.h(), b.h());
        Dual reTheta = Dual.mean(a.reTheta(), b.reTheta());
        Dual middle =
                b.regime() == Regime.LAMINAR ? LaminarLaw.friction(h, reTheta) : TurbulentLaw.friction(h, reTheta);
        Dual ends =
                Dual.mean(a.friction().times(xa.over(a.theta())), b.friction().times(xb.over(b.theta())));
        Dual centre = middle.times(Dual.mean(xa, xb)).over(Dual.mean(a.theta(), b.theta()));
        return result.minus(Dual.mean(ends, centre).times(0.5).times(xb.over(xa).log()));
    }

    private static Dual energy(Station a, Station b, Dual xa, Dual xb) {
        Dual share = later(a, b);
        Dual grown = b.energyShape().over(a.energyShape()).log();
        Dual faster = b.speed().over(a.speed()).log();
        Dual gain = Dual.between(loss(a, xa), loss(b, xb), share);
        return grown.plus(Dual.mean(a.h(), b.h()).from(1).times(faster))
                .plus(gain.times(xb.over(xa).log()));
    }

    private static Dual loss(Station s, Dual x) {
        return s.friction().times(0.5).minus(s.dissipation()).times(x.over(s.theta()));
    }

    private static Dual lag(Station a, Station b, Dual xa, Dual xb) {
        Dual share = later(a, b);
        double decay = b.regime() == Regime.WAKE ? WAKE_DECAY : 1;
        Dual thickness = Dual.mean(a.thickness(), b.thickness());
        Dual length = xb.minus(xa).over(thickness);
        Dual rate = Dual.mean(a.slip(), b.slip()).plus(1).under(LAG * 1.333);
        Dual stress = Dual.between(a.stress(), b.stress(), share);
        Dual tends = Dual.between(a.equilibriumStress(), b.equilibriumStress(), share);
        Dual friction = Dual.between(a.friction(), b.friction(), share);
        Dual h = Dual.between(a.h(), b.h(), share);
        Dual wallShape = Station.wallShape(b.regime(), h, Dual.mean(a.reTheta(), b.reTheta()));
        // Edge speed's gradient that keeps a layer in equilibrium, times length.
        Dual steady = friction.times(0.5)
                .minus(wallShape.over(h).times(1 / (TurbulentLaw.G_A * decay)).squared())
                .times(1 / TurbulentLaw.G_B)
                .over(Dual.mean(a.displacement(), b.displacement()))
                .times(xb.minus(xa));
        Dual faster = b.speed().over(a.speed()).log();
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
