package trimwright.hull;

import trimwright.boat.Hulls;
import trimwright.units.Units;
import trimwright.water.FrictionLine;
import trimwright.water.WaterState;

/**
 * The two hulls in the water, each with its own load. Resistance by {@link RoundBilgeSeries}, buoyancy by draft;
 * docs/theory/hull.md. Valid upright and near level trim; leaves out lift of the hulls, side force and added drag of
 * leeway (the boards carry it) and waves of the sea.
 */
public final class HullModel {
    /** Slenderness above which the resistance leaves the range of the measured series (-). */
    public static final double SLENDERNESS_MAX = RoundBilgeSeries.SLENDERNESS_MAX;

    /** Volume below which wetted area falls linearly and no longer with the root (m3), chosen: half a bucket of water. */
    private static final double VOLUME_FLOOR = 0.005;

    private final HullShape shape;
    private final WaterState water;
    private final double spacingRatio;
    private final double areaCoefficient;
    private final double centreX;

    /**
     * @param centreX centre of buoyancy in level trim, forward of the main foils' lift centre (m)
     */
    public HullModel(Hulls hulls, double centreX, WaterState water) {
        this.shape = new HullShape(hulls, water);
        this.water = water;
        this.centreX = centreX;
        spacingRatio = hulls.spacing() / hulls.waterlineLength();
        areaCoefficient =
                RoundBilgeSeries.wettedAreaCoefficient(hulls.beam() / hulls.draft(), hulls.blockCoefficient());
    }

    /** Buoyancy of one hull (N) with its bottom that far below the surface (m); none when above. */
    public double buoyancy(double immersion) {
        return shape.buoyancy(immersion);
    }

    /** How far below the surface (m) the bottom of a hull is when it carries that weight (N). */
    public double immersion(double carried) {
        return shape.immersion(carried);
    }

    /**
     * Fills the forces on one hull.
     *
     * @param speed of the water past the boat (m/s)
     * @param pitch bow up (rad)
     * @param own bottom of this hull below the surface (m), negative above
     * @param other the same of the other hull (m)
     */
    public void load(double speed, double pitch, double own, double other, HullLoad out) {
        double carried = shape.buoyancy(own);
        double ahead = carried > 0 ? centreX - pitch * shape.pitchStiffness(own) / carried : centreX;
        double volume = shape.volume(carried);
        out.set(
                carried,
                ahead,
                resistance(speed, carried, shape.buoyancy(other)),
                -0.5 * Math.max(own, 0),
                shape.length() / StrictMath.cbrt(volume));
    }

    /**
     * Fills the first-order change of the forces on one hull; arguments as for {@link #load}, each with its own change.
     */
    public void change(
            double speed,
            double pitch,
            double own,
            double other,
            double bySpeed,
            double byPitch,
            double byOwn,
            double byOther,
            HullChange out) {
        double carried = shape.buoyancy(own);
        if (!(carried > 0)) {
            out.set(0, 0, 0, 0);
            return;
        }
        double byCarried = shape.buoyancySlope(own) * byOwn;
        double carriedByOther = shape.buoyancy(other);
        // Stiffness in pitch over buoyancy goes with one over the immersion.
        double arm = shape.pitchStiffness(own) / carried;
        Resistance drag = resistanceOf(speed, carried, carriedByOther);
        out.set(
                byCarried,
                -arm * (byPitch - pitch * byOwn / own),
                drag.bySpeed() * bySpeed
                        + drag.byCarried() * byCarried
                        + drag.byOther() * shape.buoyancySlope(other) * byOther,
                -0.5 * byOwn);
    }

    /**
     * Resistance of one hull (N).
     *
     * @param speed (m/s), not negative
     * @param carried weight on this hull (N)
     * @param carriedByOther weight on the other hull (N)
     */
    public double resistance(double speed, double carried, double carriedByOther) {
        return resistanceOf(speed, carried, carriedByOther).force();
    }

    private Resistance resistanceOf(double speed, double carried, double carriedByOther) {
        if (!(carried > 0)) {
            return Resistance.NONE;
        }
        double length = shape.length();
        double volume = shape.volume(carried);
        double slenderness = length / StrictMath.cbrt(volume);
        double other = Math.max(carriedByOther, 0);
        double total = carried + other;
        // 1 for two equal hulls, 0 for one, smooth between; chosen
        double paired = 4 * carried * other / (total * total);
        double pairedSlope = 4 * (other - carried) / (total * total * total);
        double re = speed * length / water.kinematicViscosity();
        double friction = FrictionLine.coefficient(re);
        double root = Math.sqrt(Units.G * length);
        SeriesPoint series = RoundBilgeSeries.at(speed / root, slenderness, spacingRatio, paired);
        double coefficient = series.form * friction + series.waves;
        double area = areaCoefficient * volume * Math.sqrt(length / (volume + VOLUME_FLOOR));
        double pressure = water.dynamicPressure(speed);
        double bySpeed = series.form * FrictionLine.slope(re) * length / water.kinematicViscosity()
                + series.wavesByFroude / root;
        double bySlenderness = series.formBySlenderness * friction + series.wavesBySlenderness;
        double byPaired = series.formByPaired * friction + series.wavesByPaired;
        double byCarried = -bySlenderness * slenderness / (3 * carried) + byPaired * pairedSlope * other;
        double areaByCarried = area / carried * (1 - 0.5 * volume / (volume + VOLUME_FLOOR));
        return new Resistance(
                pressure * area * coefficient,
                area * (water.density() * speed * coefficient + pressure * bySpeed),
                pressure * (areaByCarried * coefficient + area * byCarried),
                -pressure * area * byPaired * pairedSlope * carried);
    }
}
