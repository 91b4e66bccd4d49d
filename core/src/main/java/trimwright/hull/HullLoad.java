package trimwright.hull;

/**
 * Forces on one hull. A holder that the model fills, so that a solver can ask millions of times without making garbage;
 * only this package writes into it.
 */
public final class HullLoad {
    private double buoyancy;
    private double buoyancyX;
    private double drag;
    private double dragZ;
    private double slenderness;

    /** Upward force (N), never negative. */
    public double buoyancy() {
        return buoyancy;
    }

    /** Where the buoyancy acts, forward of the main foils' lift centre (m); meaningless without buoyancy. */
    public double buoyancyX() {
        return buoyancyX;
    }

    /** Force along the water's velocity relative to the boat (N), never negative. */
    public double drag() {
        return drag;
    }

    /** Where the drag acts, below the bottom of the hulls (m): negative, above it. */
    public double dragZ() {
        return dragZ;
    }

    /**
     * Length over the cube root of the displaced volume (-); infinite out of the water. Above
     * {@link HullModel#SLENDERNESS_MAX} the regression is used beyond its range, and the drag is doubtful.
     */
    public double slenderness() {
        return slenderness;
    }

    void set(double newBuoyancy, double newBuoyancyX, double newDrag, double newDragZ, double newSlenderness) {
        buoyancy = newBuoyancy;
        buoyancyX = newBuoyancyX;
        drag = newDrag;
        dragZ = newDragZ;
        slenderness = newSlenderness;
    }
}
