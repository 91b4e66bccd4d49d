package trimwright.platform;

/** Forces (N) and moments (N m) in body axes about their origin, added up. */
public final class ForceSum {
    private double x;
    private double y;
    private double z;
    private double k;
    private double m;
    private double n;

    ForceSum() {}

    /** Adds a force at a point (m). */
    void add(double fx, double fy, double fz, double px, double py, double pz) {
        x += fx;
        y += fy;
        z += fz;
        k += py * fz - pz * fy;
        m += pz * fx - px * fz;
        n += px * fy - py * fx;
    }

    /** Adds the change of the moments of a force whose point moves (m). */
    void addMoved(double fx, double fy, double fz, double byX, double byY, double byZ) {
        k += byY * fz - byZ * fy;
        m += byZ * fx - byX * fz;
        n += byX * fy - byY * fx;
    }

    void addCouple(double roll, double pitch, double yaw) {
        k += roll;
        m += pitch;
        n += yaw;
    }

    void add(ForceSum other) {
        x += other.x;
        y += other.y;
        z += other.z;
        k += other.k;
        m += other.m;
        n += other.n;
    }

    /** Forward (N). */
    public double x() {
        return x;
    }

    /** To starboard (N). */
    public double y() {
        return y;
    }

    /** Down (N). */
    public double z() {
        return z;
    }

    /** Roll, starboard down (N m). */
    public double k() {
        return k;
    }

    /** Pitch, bow up (N m). */
    public double m() {
        return m;
    }

    /** Yaw, bow to starboard (N m). */
    public double n() {
        return n;
    }
}
