package trimwright.hull;

/** First-order change of a {@link HullLoad}, per unit of whatever changes. */
public final class HullChange {
    private double buoyancy;
    private double buoyancyX;
    private double drag;
    private double dragZ;

    /** Of the upward force (N). */
    public double buoyancy() {
        return buoyancy;
    }

    /** Of where the buoyancy acts (m). */
    public double buoyancyX() {
        return buoyancyX;
    }

    /** Of the drag (N). */
    public double drag() {
        return drag;
    }

    /** Of where the drag acts (m). */
    public double dragZ() {
        return dragZ;
    }

    void set(double newBuoyancy, double newBuoyancyX, double newDrag, double newDragZ) {
        buoyancy = newBuoyancy;
        buoyancyX = newBuoyancyX;
        drag = newDrag;
        dragZ = newDragZ;
    }
}
