package trimwright.layer;

/**
 * The layer at one place: its four unknowns and all that follows from them.
 *
 * @param stress in a laminar layer the exponent of the largest wave, else the root of the shear stress coefficient (-)
 * @param theta momentum thickness
 * @param displacement displacement thickness
 * @param speed at the edge
 * @param h shape factor (-)
 * @param reTheta Reynolds number of the momentum thickness (-)
 * @param energyShape kinetic energy over momentum thickness (-)
 * @param slip speed at the edge of the wall's own layer over edge speed (-), 0 in a laminar layer
 * @param friction coefficient (-)
 * @param dissipation twice the coefficient over the energy shape (-)
 * @param growth of the exponent of the largest wave in a laminar layer per length, 0 in others
 * @param thickness of a turbulent layer, 0 in a laminar one
 * @param equilibriumStress root of the shear stress coefficient that a turbulent layer tends to here (-), 0 in a laminar one
 */
record Station(
        Regime regime,
        Dual stress,
        Dual theta,
        Dual displacement,
        Dual speed,
        Dual h,
        Dual reTheta,
        Dual energyShape,
        Dual slip,
        Dual friction,
        Dual dissipation,
        Dual growth,
        Dual thickness,
        Dual equilibriumStress) {
    private static final double WALL_SLIP = 0.95;
    private static final double WAKE_SLIP = 0.99995;

    /** A layer of that kind at a Reynolds number of speed 1 and length 1. */
    static Station of(Regime regime, double reynolds, Dual stress, Dual theta, Dual displacement, Dual speed) {
        Dual h = displacement.over(theta);
        Dual reTheta = speed.times(theta).times(reynolds);
        Dual zero = Dual.constant(0);
        if (regime == Regime.LAMINAR) {
            return new Station(
                    regime,
                    stress,
                    theta,
                    displacement,
                    speed,
                    h,
                    reTheta,
                    LaminarLaw.energyShape(h),
                    zero,
                    LaminarLaw.friction(h, reTheta),
                    LaminarLaw.dissipation(h, reTheta),
                    LaminarLaw.growth(h, reTheta).over(theta),
                    zero,
                    zero);
        }
        Dual energyShape = TurbulentLaw.energyShape(h, reTheta);
        Dual slip = TurbulentLaw.slip(h, energyShape, regime == Regime.WAKE ? WAKE_SLIP : WALL_SLIP);
        Dual rest = slip.from(0.995);
        Dual outer = stress.squared()
                .times(rest)
                .times(2)
                .plus(rest.squared().times(0.3).over(reTheta))
                .over(energyShape);
        Dual friction = zero;
        Dual dissipation = outer.times(2); // a wake has two halves
        if (regime == Regime.TURBULENT) {
            Dual turbulent = TurbulentLaw.friction(h, reTheta);
            dissipation = turbulent
                    .times(slip)
                    .times(TurbulentLaw.wallShare(h, reTheta))
                    .over(energyShape)
                    .plus(outer);
            // At low Reynolds numbers the laminar part of the layer is the larger one.
            friction = larger(turbulent, LaminarLaw.friction(h, reTheta));
            dissipation = larger(dissipation, LaminarLaw.dissipation(h, reTheta));
        }
        return new Station(
                regime,
                stress,
                theta,
                displacement,
                speed,
                h,
                reTheta,
                energyShape,
                slip,
                friction,
                dissipation,
                zero,
                TurbulentLaw.thickness(h).times(theta),
                TurbulentLaw.equilibriumStress(h, energyShape, slip, wallShape(regime, h, reTheta)));
    }

    private static Dual larger(Dual a, Dual b) {
        return a.value >= b.value ? a : b;
    }

    /** H - 1 less the wall's own layer (-). */
    static Dual wallShape(Regime regime, Dual h, Dual reTheta) {
        Dual shape = h.minus(1);
        return regime == Regime.WAKE
                ? shape
                : shape.minus(reTheta.under(TurbulentLaw.G_WALL)).atLeast(0.01);
    }

    /** The same station with all its numbers as constants. */
    Station fixed() {
        return new Station(
                regime,
                stress.fixed(),
                theta.fixed(),
                displacement.fixed(),
                speed.fixed(),
                h.fixed(),
                reTheta.fixed(),
                energyShape.fixed(),
                slip.fixed(),
                friction.fixed(),
                dissipation.fixed(),
                growth.fixed(),
                thickness.fixed(),
                equilibriumStress.fixed());
    }

    /** The same laminar station with another exponent of the largest wave. */
    Station withExponent(double exponent) {
        return new Station(
                regime,
                Dual.unknown(exponent, Unknowns.STRESS),
                theta,
                displacement,
                speed,
                h,
                reTheta,
                energyShape,
                slip,
                friction,
                dissipation,
                growth,
                thickness,
                equilibriumStress);
    }

    /** The same place with the layer just become turbulent. */
    Station becomeTurbulent(double reynolds) {
        Station turbulent = of(Regime.TURBULENT, reynolds, Dual.constant(0.03), theta, displacement, speed);
        Dual first = TurbulentLaw.firstStress(h).times(turbulent.equilibriumStress());
        return of(Regime.TURBULENT, reynolds, first, theta, displacement, speed);
    }
}
