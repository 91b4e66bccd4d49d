package trimwright.layer;

/**
 * Laws that close the turbulent layer and the wake, over the shape factor H and the Reynolds number of the momentum thickness.
 * Shear stress lags behind the flow: its root is an unknown of the layer, and here stands where it tends to.
 *
 * <p>Source: DRELA-GILES-1987, with the constants that XFOIL 6.99 uses, the wall's share of dissipation from memory.
 */
final class TurbulentLaw {
    /** Constants of equilibrium flows, G = A sqrt(1 + B beta), and of the layer next to the wall. */
    static final double G_A = 6.7;

    static final double G_B = 0.75;
    static final double G_WALL = 18.0;

    private static final double LEAST_ENERGY_SHAPE = 1.5;

    private static final double PER_LN_10 = 1 / StrictMath.log(10);

    private TurbulentLaw() {}

    /** Kinetic energy over momentum thickness (-). */
    static Dual energyShape(Dual h, Dual reTheta) {
        Dual inverse = reTheta.atLeast(200).under(4);
        Dual turn = reTheta.value > 400 ? reTheta.under(400).plus(3) : Dual.constant(4);
        if (h.value < turn.value) {
            Dual ratio = turn.minus(h).over(turn.minus(1));
            return ratio.squared()
                    .times(inverse.from(2 - LEAST_ENERGY_SHAPE))
                    .times(1.5)
                    .over(h.plus(0.5))
                    .plus(inverse)
                    .plus(LEAST_ENERGY_SHAPE);
        }
        Dual log = reTheta.atLeast(200).log();
        Dual off = h.minus(turn);
        Dual rise = log.times(0.007).over(off.plus(log.under(4)).squared()).plus(h.under(0.015));
        return off.squared().times(rise).plus(inverse).plus(LEAST_ENERGY_SHAPE);
    }

    /** Friction coefficient (-). */
    static Dual friction(Dual h, Dual reTheta) {
        Dual log = reTheta.log().atLeast(3);
        Dual exponent = h.times(-0.31).minus(1.74);
        Dual attached = h.times(-1.33).atLeast(-20).exp().times(0.3);
        return attached.times(log.times(PER_LN_10).power(exponent))
                .plus(h.times(-1 / 0.875).plus(4).tanh().minus(1).times(1.1e-4));
    }

    /** Speed at the edge of the wall's own layer over edge speed (-). */
    static Dual slip(Dual h, Dual energyShape, double most) {
        return energyShape
                .times(0.5)
                .times(h.minus(1).over(h).times(-1 / G_B).plus(1))
                .atMost(most);
    }

    /** Root of the shear stress coefficient that the layer tends to (-). */
    static Dual equilibriumStress(Dual h, Dual energyShape, Dual slip, Dual wallShape) {
        double constant = 0.5 / (G_A * G_A * G_B);
        return energyShape
                .times(constant)
                .times(h.minus(1))
                .times(wallShape.squared())
                .over(slip.from(1).times(h.cubed()))
                .root();
    }

    /** Root of the shear stress coefficient with which a layer becomes turbulent, over that which it tends to (-). */
    static Dual firstStress(Dual h) {
        return h.minus(1).under(-3.3).exp().times(1.8);
    }

    /** Thickness of the layer over momentum thickness (-). */
    static Dual thickness(Dual h) {
        return h.minus(1).under(1.72).plus(3.15).plus(h).atMost(12);
    }

    /** Share of the wall's dissipation that remains in thin layers (-). */
    static Dual wallShare(Dual h, Dual reTheta) {
        Dual least = reTheta.log().under(2.1).plus(1);
        return h.minus(1).over(least.minus(1)).tanh().times(0.5).plus(0.5);
    }
}
