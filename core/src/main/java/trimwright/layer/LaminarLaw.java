package trimwright.layer;

/**
 * Laws that close the laminar layer, over the shape factor H (displacement over momentum thickness) and the Reynolds number of
 * the momentum thickness: fits to similar flows, and the growth of the waves that make the layer turbulent.
 *
 * <p>Source: DRELA-GILES-1987, with the constants that XFOIL 6.99 uses.
 */
final class LaminarLaw {
    /** Rounding of the onset of growth, in decades of Reynolds number. */
    private static final double ONSET = 0.08;

    private static final double PER_LN_10 = 1 / StrictMath.log(10);

    private LaminarLaw() {}

    /** Kinetic energy over momentum thickness (-). */
    static Dual energyShape(Dual h) {
        if (h.value < 4.35) {
            Dual off = h.minus(4.35);
            Dual last = off.times(h).squared().times(0.0002);
            return off.squared()
                    .times(0.0111)
                    .minus(off.cubed().times(0.0278))
                    .over(h.plus(1))
                    .plus(1.528)
                    .minus(last);
        }
        return h.minus(4.35).squared().times(0.015).over(h).plus(1.528);
    }

    /** Friction coefficient (-). */
    static Dual friction(Dual h, Dual reTheta) {
        Dual product = h.value < 5.5
                ? h.from(5.5).cubed().times(0.0727).over(h.plus(1)).minus(0.07)
                : h.minus(4.5).under(1).from(1).squared().times(0.015).minus(0.07);
        return product.over(reTheta);
    }

    /** Twice the dissipation coefficient over the energy shape (-). */
    static Dual dissipation(Dual h, Dual reTheta) {
        Dual product;
        if (h.value < 4) {
            product = h.from(4).power(5.5).times(0.00205).plus(0.207);
        } else {
            Dual off = h.minus(4).squared();
            product = off.times(-0.0016).over(off.times(0.02).plus(1)).plus(0.207);
        }
        return product.over(reTheta);
    }

    /** Growth of the exponent of the largest wave per length, times the momentum thickness (-). */
    static Dual growth(Dual h, Dual reTheta) {
        Dual inverse = h.minus(1).under(1);
        Dual critical = inverse.power(0.43)
                .times(2.492)
                .plus(inverse.times(14).minus(9.24).tanh().plus(1).times(0.7));
        Dual above = reTheta.log().times(PER_LN_10).minus(critical);
        if (above.value < -ONSET) {
            return Dual.constant(0);
        }
        Dual byReynolds = h.minus(1)
                .times(0.028)
                .minus(inverse.times(3.87).minus(2.52).squared().times(-1).exp().times(0.0345));
        Dual byLength = inverse.times(2.7)
                .minus(inverse.squared().times(5.5))
                .plus(inverse.cubed().times(3))
                .minus(0.05);
        Dual growth = byReynolds.times(byLength);
        if (above.value >= ONSET) {
            return growth;
        }
        Dual ramp = above.plus(ONSET).times(0.5 / ONSET);
        return growth.times(ramp.squared().times(ramp.times(2).from(3)));
    }
}
