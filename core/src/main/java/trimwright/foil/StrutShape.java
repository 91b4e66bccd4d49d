package trimwright.foil;

/**
 * Shape of a shaft.
 *
 * @param length below the bottom of the hull (m)
 * @param chord (m)
 * @param thicknessRatio thickness over chord (-)
 * @param efficiency span efficiency at high speed, surface and lower end included (-)
 * @param jointArea drag of the joint at the lower end over dynamic pressure (m2)
 */
record StrutShape(double length, double chord, double thicknessRatio, double efficiency, double jointArea) {}
