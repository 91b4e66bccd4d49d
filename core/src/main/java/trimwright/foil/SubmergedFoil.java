package trimwright.foil;

import trimwright.boat.Side;
import trimwright.water.WaterState;

/**
 * A level or slightly sloping lifting surface below the surface: the tip of a main foil or an elevator. Lifting-line
 * slope with the surface's two factors, induced and wave drag, profile, stall, cavitation; docs/theory/foil.md. Leaves
 * out sweep, unsteady lift and the exact shape of the load where the tip meets the shaft.
 */
public final class SubmergedFoil {
    final FoilShape shape;
    private final double x;
    private final double y;
    private final double z;
    final WaterState water;
    final double sideSin;
    final double cos;
    final double aspectRatio;

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
        new SubmergedState(this, flow, incidence).putInto(out);
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

    /** Change of {@link #downwash} with changes of flow, of this foil's own load and of the depth that it is asked for at. */
    double downwashChange(
            Flow flow, FoilLoad own, double distance, double depth, FlowChange by, FoilChange byOwn, double byDepth) {
        double span = shape.span();
        double induced = own.liftCoefficient() / (Math.PI * aspectRatio);
        double byInduced = byOwn.liftCoefficient() / (Math.PI * aspectRatio);
        double wake = flow.depth() + TandemWash.sinking(induced, distance, span);
        double byWake = by.depth() + TandemWash.sinking(byInduced, distance, span);
        double nearness = TandemWash.away(depth - wake, span) + TandemWash.away(depth + wake, span);
        double byNearness = TandemWash.awayChange(depth - wake, span, byDepth - byWake, 0)
                + TandemWash.awayChange(depth + wake, span, byDepth + byWake, 0);
        double speed = Math.sqrt(flow.u() * flow.u() + flow.w() * flow.w());
        double bySpeed = (flow.u() * by.u() + flow.w() * by.w()) / (speed + 1e-9);
        return TandemWash.growth(distance, span)
                * (byInduced * nearness * speed + induced * (byNearness * speed + nearness * bySpeed));
    }
}
