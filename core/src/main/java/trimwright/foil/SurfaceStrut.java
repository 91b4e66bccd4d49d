package trimwright.foil;

import trimwright.units.Units;
import trimwright.water.WaterState;
import trimwright.water.Wetting;

/**
 * A vertical shaft that comes out of the bottom of a hull and pierces the surface when the hull flies: the shaft of a
 * main foil or a rudder. Helmbold slope with an effective aspect ratio, induced and profile drag, spray, the joint at its
 * lower end, stall, cavitation, inception of ventilation; docs/theory/foil.md. A ventilated strut keeps its lift here:
 * the ratio says when that is no longer to be trusted.
 */
public final class SurfaceStrut {
    /** Span efficiency of a strut with a free lower end when the surface is a plane of constant pressure (-). */
    static final double FREE_TIP = 64 / (9 * Math.PI * Math.PI);

    /** The same of a shaft with an L tip (-), chosen: the tip is an end plate of a kind. */
    static final double L_TIP = 1.1;

    /** The same against a rigid wall: a slow surface or the bottom of a hull (-). */
    private static final double WALL = 2.0;

    /** Centre of the side force below the surface over wetted length (-): loads sin 2 theta, and half an ellipse. */
    private static final double CENTRE_FAST = 3 * Math.PI / 16;

    private static final double CENTRE_WALL = 4 / (3 * Math.PI);

    /** Over this length the strut enters the water and the hull comes down on it (m), chosen. */
    private static final double EDGE = 0.1;

    /** Keeps Froude number and aspect ratio finite out of the water (m), chosen. */
    private static final double LENGTH_FLOOR = 0.02;

    /** Rounds the lift's absolute value near zero (-), chosen. */
    private static final double ROUNDING = 1e-4;

    private final StrutShape shape;
    private final double x;
    private final double y;
    private final WaterState water;

    SurfaceStrut(StrutShape shape, double x, double y, WaterState water) {
        this.shape = shape;
        this.x = x;
        this.y = y;
        this.water = water;
    }

    /** Place of the shaft: forward (m). */
    public double x() {
        return x;
    }

    /** Place of the shaft to starboard (m). */
    public double y() {
        return y;
    }

    /** Lower end below the bottom of the hulls (m): the point whose depth the flow carries. */
    public double endZ() {
        return shape.length();
    }

    /** Middle of the wetted part below the bottom of the hulls (m), for that depth of the lower end (m). */
    public double middleZ(double depth) {
        return shape.length() - 0.5 * wettedLength(depth);
    }

    /** Length in the water (m) for that depth of the lower end (m). */
    public double wettedLength(double depth) {
        double dry = Wetting.length(shape.length() - depth, EDGE);
        return Wetting.length(shape.length() - dry, EDGE);
    }

    /** Fills the force, for flow in the shaft's own axes (x along its chord). */
    void load(Flow flow, FoilLoad out) {
        double density = water.density();
        double across2 = flow.u() * flow.u() + flow.v() * flow.v();
        double across = Math.sqrt(across2);
        double speed = Math.sqrt(across2 + flow.w() * flow.w());
        double q = 0.5 * density * across2;

        double length = wettedLength(flow.depth());
        double wet = Wetting.fraction(flow.depth(), EDGE);
        double covered = Wetting.fraction(flow.depth() - shape.length() + EDGE, EDGE);
        double froude2 = across2 / (Units.G * (length + LENGTH_FLOOR));
        // Slow water is a wall; the fourth power is chosen, it makes the change at a depth Froude number of 1.
        double wall = covered + (1 - covered) / (1 + froude2 * froude2);
        double efficiency = shape.efficiency() + (WALL - shape.efficiency()) * wall;
        double aspectRatio = efficiency * (length + LENGTH_FLOOR * (1 - wet)) / shape.chord();
        double slope = 2 * Math.PI * aspectRatio / (2 + Math.sqrt(aspectRatio * aspectRatio + 4));

        double safe = across + 1e-9;
        double sine = flow.v() / safe;
        double cosine = -flow.u() / safe;
        double asked = slope * sine * cosine;
        double ceiling = LiftCurve.ceiling(q);
        double given = LiftCurve.given(asked / ceiling);
        double cl = asked * given;

        double suction = Cavitation.suction(shape.thicknessRatio(), Math.sqrt(cl * cl + ROUNDING));
        double cavitation = suction * q / water.pressureAboveVapour(0.5 * length);
        double re = speed * shape.chord() / water.kinematicViscosity();
        double cd = SectionDrag.profile(re, shape.thicknessRatio(), cl)
                + cl * cl / (Math.PI * aspectRatio)
                + LiftCurve.separatedDrag(sine, given)
                + Cavitation.addedDrag(suction, cavitation);
        double dragArea = length * shape.chord() * cd
                + wet * shape.jointArea()
                + wet * (1 - covered) * SectionDrag.sprayArea(shape.thicknessRatio() * shape.chord());

        double area = length * shape.chord();
        double liftOverSpeed = 0.5 * density * across * area * cl;
        double dragOverSpeed = 0.5 * density * speed * dragArea;
        out.setForce(
                dragOverSpeed * flow.u() + liftOverSpeed * flow.v(),
                dragOverSpeed * flow.v() - liftOverSpeed * flow.u(),
                dragOverSpeed * flow.w());
        double centre = CENTRE_FAST + (CENTRE_WALL - CENTRE_FAST) * wall;
        out.setPoint(x, y, shape.length() - length * (1 - centre));
        out.setLoads(q * area * cl, dragOverSpeed * speed, cl * wet);
        double froude = Math.sqrt(froude2) + 1e-9;
        double vapourNumber = water.pressureAboveVapour(0) / (q + 1e-9);
        double inception = Ventilation.inceptionLift(vapourNumber, froude);
        out.setUse(Math.abs(asked) / ceiling * wet, cavitation * wet, Math.abs(cl) / inception * wet * (1 - covered));
    }

    /**
     * Velocity (m/s, to starboard) that the shaft gives to the water behind it.
     *
     * @param own load that this shaft last returned for that flow
     * @param distance aft of the shaft (m), positive
     * @param y where it is asked for, to starboard of the centreline (m)
     */
    double sidewash(Flow flow, FoilLoad own, double distance, double y) {
        double length = wettedLength(flow.depth()) + LENGTH_FLOOR;
        double induced = -own.liftCoefficient() * shape.chord() / (Math.PI * shape.efficiency() * length);
        double span = 2 * length;
        double speed = Math.sqrt(flow.u() * flow.u() + flow.v() * flow.v());
        double wake = this.y + distance * flow.v() / (speed + 1e-9) + TandemWash.sinking(induced, distance, span);
        return TandemWash.growth(distance, span) * induced * TandemWash.away(y - wake, span) * speed;
    }
}
