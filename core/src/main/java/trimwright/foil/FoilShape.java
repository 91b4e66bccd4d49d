package trimwright.foil;

/**
 * Shape of a lifting surface.
 *
 * @param span (m)
 * @param chord (m)
 * @param thicknessRatio thickness over chord (-)
 * @param designLiftCoefficient lift coefficient at no incidence to the chord (-)
 * @param dihedral upward slope toward the boat's centreline (rad)
 */
record FoilShape(double span, double chord, double thicknessRatio, double designLiftCoefficient, double dihedral) {
    double area() {
        return span * chord;
    }

    /** How far the chord may point down before the section stops lifting (rad); thin aerofoil, even load. */
    double zeroLiftAngle() {
        return designLiftCoefficient / (2 * Math.PI);
    }
}
