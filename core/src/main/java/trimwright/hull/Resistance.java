package trimwright.hull;

/**
 * Resistance of one hull and its slopes.
 *
 * @param force (N)
 * @param bySpeed (N s/m)
 * @param byCarried over the weight on this hull (-)
 * @param byOther over the weight on the other (-)
 */
record Resistance(double force, double bySpeed, double byCarried, double byOther) {
    static final Resistance NONE = new Resistance(0, 0, 0, 0);
}
