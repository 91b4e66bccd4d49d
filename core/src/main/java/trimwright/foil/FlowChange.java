package trimwright.foil;

/** First-order change of a {@link Flow}, per unit of whatever changes: velocity (m/s) and depth (m). */
public record FlowChange(double u, double v, double w, double depth) {
    boolean isNone() {
        return u == 0 && v == 0 && w == 0 && depth == 0;
    }
}
