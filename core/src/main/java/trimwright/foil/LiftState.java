package trimwright.foil;

import trimwright.water.WaterState;

/** What the lift of an element that meets the water at an angle makes of it, and its first-order changes. */
final class LiftState {
    /** Rounds the lift's absolute value near zero (-), chosen. */
    private static final double ROUNDING = 1e-4;

    final double sine;
    final double cosine;
    final double slope;
    final double q;
    final double asked;
    final double ceiling;
    final double given;
    final double cl;
    final double suction;
    final double cavitation;
    private final double thicknessRatio;
    private final double size;
    private final double pressure;
    private final double pressureSlope;

    /**
     * @param sine of the angle of attack (-)
     * @param cosine of it (-)
     * @param slope of the lift coefficient (1/rad)
     * @param q dynamic pressure (Pa)
     * @param depth for the pressure of the water (m)
     */
    LiftState(
            double sine, double cosine, double slope, double q, double thicknessRatio, double depth, WaterState water) {
        this.sine = sine;
        this.cosine = cosine;
        this.slope = slope;
        this.q = q;
        this.thicknessRatio = thicknessRatio;
        asked = slope * sine * cosine;
        ceiling = LiftCurve.ceiling(q);
        given = LiftCurve.given(asked / ceiling);
        cl = asked * given;
        size = Math.sqrt(cl * cl + ROUNDING);
        suction = Cavitation.suction(thicknessRatio, size);
        pressure = water.pressureAboveVapour(depth);
        pressureSlope = water.pressureSlope();
        cavitation = suction * q / pressure;
    }

    /** Drag coefficient of separation and boiling (-). */
    double addedDrag() {
        return LiftCurve.separatedDrag(sine, given) + Cavitation.addedDrag(suction, cavitation);
    }

    /** First-order changes of all these. */
    static final class Change {
        double asked;
        double ceiling;
        double cl;
        double cavitation;
        double addedDrag;

        void of(LiftState at, double sine, double cosine, double slope, double q, double depth) {
            asked = slope * at.sine * at.cosine + at.slope * (sine * at.cosine + at.sine * cosine);
            ceiling = LiftCurve.ceilingSlope(at.q) * q;
            double ratio = at.asked / at.ceiling;
            double given = LiftCurve.givenSlope(ratio) * (asked - ratio * ceiling) / at.ceiling;
            cl = asked * at.given + at.asked * given;
            double suction = Cavitation.suctionSlope(at.thicknessRatio, at.size) * at.cl / at.size * cl;
            cavitation = (suction * at.q + at.suction * q - at.cavitation * at.pressureSlope * depth) / at.pressure;
            addedDrag = LiftCurve.separatedDragChange(at.sine, at.given, sine, given)
                    + Cavitation.addedDragChange(at.suction, at.cavitation, suction, cavitation);
        }

        /** Change of the size of asked lift over ceiling (-). */
        double stallRatio(LiftState at) {
            return (Math.signum(at.asked) * asked - Math.abs(at.asked) / at.ceiling * ceiling) / at.ceiling;
        }
    }
}
