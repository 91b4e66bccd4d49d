package trimwright.motion;

/** Sum of forces and of their moments about the body's origin, body axes: a workspace of one step. */
final class ForceSum {
    double x;
    double y;
    double z;
    double k;
    double m;
    double n;

    void clear() {
        x = 0;
        y = 0;
        z = 0;
        k = 0;
        m = 0;
        n = 0;
    }

    /** Adds a force (N) at a point (m). */
    void add(double fx, double fy, double fz, double px, double py, double pz) {
        x += fx;
        y += fy;
        z += fz;
        k += py * fz - pz * fy;
        m += pz * fx - px * fz;
        n += px * fy - py * fx;
    }

    void addMoment(double mk, double mm, double mn) {
        k += mk;
        m += mm;
        n += mn;
    }
}
