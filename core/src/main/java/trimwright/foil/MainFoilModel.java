package trimwright.foil;

import trimwright.boat.MainFoil;
import trimwright.boat.Side;
import trimwright.water.WaterState;

/** Forces on one L-shaped main foil, fully down: shaft for side force, inboard tip for lift. */
public final class MainFoilModel {
    private final SurfaceStrut shaft;
    private final SubmergedFoil tip;

    public MainFoilModel(MainFoil foil, Side side, WaterState water) {
        double meanRatio = 0.5 * (foil.shaftThicknessRatio() + foil.tipThicknessRatio());
        double meanThickness =
                0.5 * (foil.shaftThicknessRatio() * foil.shaftChord() + foil.tipThicknessRatio() * foil.tipChord());
        StrutShape shaftShape = new StrutShape(
                foil.shaftLength(),
                foil.shaftChord(),
                foil.shaftThicknessRatio(),
                SurfaceStrut.L_TIP,
                SectionDrag.junctionArea(meanRatio, meanThickness));
        shaft = new SurfaceStrut(shaftShape, 0, side.sign() * foil.yJunction(), water);
        FoilShape tipShape = new FoilShape(
                foil.tipSpan(),
                foil.tipChord(),
                foil.tipThicknessRatio(),
                foil.tipDesignLiftCoefficient(),
                foil.tipDihedral());
        double rise = (foil.yJunction() - foil.yLift()) * StrictMath.tan(foil.tipDihedral());
        tip = new SubmergedFoil(tipShape, side, 0, foil.yLift(), foil.shaftLength() - rise, water);
    }

    /** Where the shaft stands and how much of it is wet. */
    public SurfaceStrut shaft() {
        return shaft;
    }

    /** Where the tip's lift acts. */
    public SubmergedFoil tip() {
        return tip;
    }

    /** First-order changes of both loads about one flow at each; rake as for {@link #tip}. */
    public MainFoilChange about(Flow atShaft, Flow atTip, double rake) {
        return new MainFoilChange(this, atShaft, atTip, rake);
    }

    /** Force on the shaft; depth in the flow is that of its lower end. */
    public void shaft(Flow flow, FoilLoad out) {
        shaft.load(flow, 1, out);
    }

    /** The same with that share of the lift slope left (-), as air that has come down the shaft leaves it. */
    public void shaft(Flow flow, double kept, FoilLoad out) {
        shaft.load(flow, kept, out);
    }

    /** Force on the tip; depth in the flow is that of its reference point; rake (rad) is its incidence, nose up. */
    public void tip(Flow flow, double rake, FoilLoad out) {
        tip.load(flow, rake, out);
    }

    /**
     * Velocity (m/s, down) to add to the water at an elevator behind the tip.
     *
     * @param own what {@link #tip} filled for that flow
     * @param distance aft (m), positive
     * @param depth of the elevator below the surface (m)
     */
    public double downwash(Flow atTip, FoilLoad own, double distance, double depth) {
        return tip.downwash(atTip, own, distance, depth);
    }

    /**
     * Velocity (m/s, to starboard) to add to the water at a rudder behind the shaft.
     *
     * @param own what {@link #shaft} filled for that flow
     * @param distance aft (m), positive
     * @param y of the rudder, to starboard of the centreline (m)
     */
    public double sidewash(Flow atShaft, FoilLoad own, double distance, double y) {
        return shaft.sidewash(atShaft, own, distance, y);
    }
}
