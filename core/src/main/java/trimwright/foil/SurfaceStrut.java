package trimwright.foil;

import trimwright.water.WaterState;
import trimwright.water.Wetting;

/**
 * A vertical shaft that comes out of the bottom of a hull and pierces the surface when the hull flies: the shaft of a
 * main foil or a rudder. Helmbold slope with an effective aspect ratio, induced and profile drag, spray, the joint at its
 * lower end, stall, cavitation, inception of ventilation; docs/theory/foil.md. A ventilated strut keeps its lift here
 * unless the caller says what is left of it: the ratio says when that is to be asked.
 */
public final class SurfaceStrut {
    /** Span efficiency of a strut with a free lower end when the surface is a plane of constant pressure (-). */
    static final double FREE_TIP = 64 / (9 * Math.PI * Math.PI);

    /** The same of a shaft with an L tip (-), chosen: the tip is an end plate of a kind. */
    static final double L_TIP = 1.1;

    /** The same against a rigid wall: a slow surface or the bottom of a hull (-). */
    static final double WALL = 2.0;

    /** Centre of the side force below the surface over wetted length (-): loads sin 2 theta, and half an ellipse. */
    static final double CENTRE_FAST = 3 * Math.PI / 16;

    static final double CENTRE_WALL = 4 / (3 * Math.PI);

    /** Over this length the strut enters the water and the hull comes down on it (m), chosen. */
    static final double EDGE = 0.1;

    /** Keeps Froude number and aspect ratio finite out of the water (m), chosen. */
    static final double LENGTH_FLOOR = 0.02;

    final StrutShape shape;
    private final double x;
    private final double y;
    final WaterState water;

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

    /** Slope of {@link #wettedLength} over that depth (-). */
    double wettedLengthSlope(double depth) {
        double dry = Wetting.length(shape.length() - depth, EDGE);
        return Wetting.lengthSlope(shape.length() - dry, EDGE) * Wetting.lengthSlope(shape.length() - depth, EDGE);
    }

    /**
     * Fills the force, for flow in the shaft's own axes (x along its chord).
     *
     * @param kept share of the lift slope that is left (-)
     */
    void load(Flow flow, double kept, FoilLoad out) {
        new StrutState(this, flow, kept).putInto(out);
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

    /** Change of {@link #sidewash} with changes of flow and of this shaft's own load. */
    double sidewashChange(Flow flow, FoilLoad own, double distance, double y, FlowChange by, FoilChange byOwn) {
        double length = wettedLength(flow.depth()) + LENGTH_FLOOR;
        double byLength = wettedLengthSlope(flow.depth()) * by.depth();
        double factor = -shape.chord() / (Math.PI * shape.efficiency() * length);
        double induced = factor * own.liftCoefficient();
        double byInduced = factor * byOwn.liftCoefficient() - induced * byLength / length;
        double span = 2 * length;
        double bySpan = 2 * byLength;
        double speed = Math.sqrt(flow.u() * flow.u() + flow.v() * flow.v());
        double safe = speed + 1e-9;
        double bySpeed = (flow.u() * by.u() + flow.v() * by.v()) / safe;
        double wake = this.y + distance * flow.v() / safe + TandemWash.sinking(induced, distance, span);
        double byWake = distance * (by.v() - flow.v() / safe * bySpeed) / safe
                + TandemWash.sinkingChange(induced, distance, span, byInduced, bySpan);
        double growth = TandemWash.growth(distance, span);
        double byGrowth = TandemWash.growthSlope(distance, span) * bySpan;
        double away = TandemWash.away(y - wake, span);
        double byAway = TandemWash.awayChange(y - wake, span, -byWake, bySpan);
        return byGrowth * induced * away * speed
                + growth * (byInduced * away * speed + induced * (byAway * speed + away * bySpeed));
    }
}
