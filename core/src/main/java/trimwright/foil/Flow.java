package trimwright.foil;

/**
 * The water at one element.
 *
 * @param u velocity of the water relative to the boat along body x (m/s); sailing ahead makes it negative
 * @param v the same along body y, to starboard (m/s)
 * @param w the same along body z, down (m/s)
 * @param depth of the element's reference point below the undisturbed surface (m), negative when above it
 */
public record Flow(double u, double v, double w, double depth) {}
