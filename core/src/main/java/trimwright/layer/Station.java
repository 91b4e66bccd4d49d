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
        Dual dissipation) {
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
                    LaminarLaw.dissipation(h, reTheta));
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
                regime, stress, theta, displacement, speed, h, reTheta, energyShape, slip, friction, dissipation);
    }

    private static Dual larger(Dual a, Dual b) {
        return a.value >= b.value ? a : b;
    }

    /** Root of the shear stress coefficient that a turbulent layer tends to here (-). */
    Dual equilibriumStress() {
        return TurbulentLaw.equilibriumStress(h, energyShape, slip, wallShape(regime, h, reTheta));
    }

    /** Thickness of a turbulent layer. */
    Dual thickness() {
        return TurbulentLaw.thickness(h).times(theta);
    }

    /** Growth of the exponent of the largest wave in a laminar layer per length. */
    Dual growth() {
        return LaminarLaw.growth(h, reTheta).over(theta);
    }

    /** H - 1 less the wall's own layer (-). */
    static Dual wallShape(Regime regime, Dual h, Dual reTheta) {
        Dual shape = h.minus(1);
        return regime == Regime.WAKE
                ? shape
                : shape.minus(reTheta.under(TurbulentLaw.G_WALL)).atLeast(0.01);
    }

    /** The same station as the earlier one of the next interval. */
    Station asEarlier() {
        return new Station(
                regime,
                stress.asEarlier(),
                theta.asEarlier(),
                displacement.asEarlier(),
                speed.asEarlier(),
                h.asEarlier(),
                reTheta.asEarlier(),
                energyShape.asEarlier(),
                slip.asEarlier(),
                friction.asEarlier(),
                dissipation.asEarlier());
    }

    /** The same place with the layer just become turbulent. */
    Station becomeTurbulent(double reynolds) {
        Station turbulent = of(Regime.TURBULENT, reynolds, Dual.constant(0.03), theta, displacement, speed);
        Dual first = TurbulentLaw.firstStress(h).times(turbulent.equilibriumStress());
        return of(Regime.TURBULENT, reynolds, first, theta, displacement, speed);
    }
}
