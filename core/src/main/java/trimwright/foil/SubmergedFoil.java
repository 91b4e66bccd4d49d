package trimwright.foil;

import trimwright.boat.Side;
import trimwright.units.Units;
import trimwright.water.WaterState;
import trimwright.water.Wetting;

/**
 * A level or slightly sloping lifting surface below the surface: the tip of a main foil or an elevator. Lifting-line
 * slope with the surface's two factors, induced and wave drag, profile, stall, cavitation; docs/theory/foil.md. Leaves
 * out sweep, unsteady lift and the exact shape of the load where the tip meets the shaft.
 */
public final class SubmergedFoil {
    /** Depth over chord from which the foil counts as fully wetted (-); Benson and Land: abrupt losses above 0.5. */
    private static final double FULLY_WETTED = 0.5;

    /** Keeps the depth Froude number finite at the surface (m), chosen. */
    private static final double DEPTH_FLOOR = 0.02;

    /** Rounds the lift's absolute value near zero (-), chosen. */
    private static final double ROUNDING = 1e-4;

    private final FoilShape shape;
    private final double x;
    private final double y;
    private final double z;
    private final WaterState water;
    private final double sideSin;
    private final double cos;
    private final double aspectRatio;

    SubmergedFoil(FoilShape shape, Side side, double x, double yOutward, double z, WaterState water) {
        this.shape = shape;
        this.x = x;
        this.y = side.sign() * yOutward;
        this.z = z;
        this.water = water;
        this.sideSin = side.sign() * StrictMath.sin(shape.dihedral());
        this.cos = StrictMath.cos(shape.dihedral());
        this.aspectRatio = shape.span() / shape.chord();
    }

    /** Reference point, where flow and depth are asked for and the force acts: forward (m). */
    public double x() {
        return x;
    }

    /** Reference point to starboard (m). */
    public double y() {
        return y;
    }

    /** Reference point below the bottom of the hulls (m). */
    public double z() {
        return z;
    }

    /**
     * Fills the force.
     *
     * @param incidence nose up (rad), on top of the boat's own pitch, which the flow carries
     */
    void load(Flow flow, double incidence, FoilLoad out) {
        double density = water.density();
        // Normal of the span's plane, upward: (0, sideSin, -cos). Only the flow across the span lifts.
        double un = flow.v() * sideSin - flow.w() * cos;
        double across2 = flow.u() * flow.u() + un * un;
        double across = Math.sqrt(across2);
        double speed = Math.sqrt(across2 + square(flow.v() * cos + flow.w() * sideSin));
        double q = 0.5 * density * across2;

        double wet = Wetting.fraction(flow.depth(), FULLY_WETTED * shape.chord());
        double depth = Wetting.length(flow.depth(), DEPTH_FLOOR) + DEPTH_FLOOR * (1 - wet);
        double lambda = 2 * depth / shape.span();
        double sigma = FreeSurface.biplaneFactor(lambda);
        double liftFactor = FreeSurface.liftFactor(depth / shape.chord(), across / Math.sqrt(Units.G * depth));
        double slope = FreeSurface.liftSlope(aspectRatio, liftFactor, sigma);

        double angle = incidence + shape.zeroLiftAngle();
        double safe = across + 1e-9;
        double sine = (-flow.u() * StrictMath.sin(angle) + un * StrictMath.cos(angle)) / safe;
        double cosine = -(flow.u() * StrictMath.cos(angle) + un * StrictMath.sin(angle)) / safe;
        double asked = slope * sine * cosine;
        double ceiling = LiftCurve.ceiling(q);
        double given = LiftCurve.given(asked / ceiling);
        double cl = asked * given;

        double suction = Cavitation.suction(shape.thicknessRatio(), Math.sqrt(cl * cl + ROUNDING));
        double cavitation = suction * q / water.pressureAboveVapour(depth);
        double re = speed * shape.chord() / water.kinematicViscosity();
        double cd = SectionDrag.profile(re, shape.thicknessRatio(), cl - shape.designLiftCoefficient())
                + cl
                        * cl
                        / (Math.PI * aspectRatio)
                        * FreeSurface.dragFactor(lambda, sigma, FreeSurface.waveNumber(shape.span(), across))
                + LiftCurve.separatedDrag(sine, given)
                + Cavitation.addedDrag(suction, cavitation);

        double area = shape.area() * wet;
        // Lift over speed, so that no direction is needed at rest.
        double liftOverSpeed = 0.5 * density * across * area * cl;
        double dragOverSpeed = 0.5 * density * speed * area * cd;
        double along = dragOverSpeed * flow.u() + liftOverSpeed * un;
        double up = -liftOverSpeed * flow.u();
        out.setForce(along, dragOverSpeed * flow.v() + up * sideSin, dragOverSpeed * flow.w() - up * cos);
        out.setPoint(x, y, z);
        out.setLoads(q * area * cl, dragOverSpeed * speed, cl * wet);
        out.setUse(Math.abs(asked) / ceiling * wet, cavitation * wet, 0);
    }

    /**
     * Velocity (m/s, down) that the foil and its image above the surface give to the water behind it.
     *
     * @param own load that this foil last returned for that flow
     * @param distance aft of the foil (m), positive
     * @param depth where it is asked for, below the surface (m)
     */
    double downwash(Flow flow, FoilLoad own, double distance, double depth) {
        double induced = own.liftCoefficient() / (Math.PI * aspectRatio);
        double span = shape.span();
        double wake = flow.depth() + TandemWash.sinking(induced, distance, span);
        double nearness = TandemWash.away(depth - wake, span) + TandemWash.away(depth + wake, span);
        double speed = Math.sqrt(flow.u() * flow.u() + flow.w() * flow.w());
        return TandemWash.growth(distance, span) * induced * nearness * speed;
    }

    private static double square(double a) {
        return a * a;
    }
}
