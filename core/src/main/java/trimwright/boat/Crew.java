package trimwright.boat;

/**
 * The crew as a mass that is moved to windward.
 *
 * @param count number of people (-)
 * @param massEach mass of one (kg)
 * @param x forward of the main foils' lift centre (m)
 * @param yMax furthest place to windward of the centreline (m)
 * @param height above the bottom of the hulls (m)
 */
public record Crew(int count, double massEach, double x, double yMax, double height) {
    public double mass() {
        return count * massEach;
    }
}
