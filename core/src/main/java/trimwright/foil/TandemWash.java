package trimwright.foil;

/** Flow turned by a lifting surface, some way behind it, in the plane of its wake. */
public final class TandemWash {
    private TandemWash() {}

    /**
     * Angle by which the water is turned (rad), same sign as the lift coefficient; twice the induced angle far behind.
     *
     * @param aspectRatio effective, any image's share included (-)
     * @param distance behind the surface (m), positive
     * @param span of the surface (m)
     */
    public static double angle(double liftCoefficient, double aspectRatio, double distance, double span) {
        return growth(distance, span) * liftCoefficient / (Math.PI * aspectRatio);
    }

    /** Downwash over the induced angle at the surface itself (-), elliptic load: tends to 2. */
    public static double growth(double distance, double span) {
        double overSemispan = 2 * distance / span;
        double k2 = 1 / (1 + overSemispan * overSemispan);
        return 1 + 2 / Math.PI * EllipticIntegrals.second(k2) / Math.sqrt(1 - k2);
    }
}
