package trimwright.boat;

/**
 * A foil set: the main foils and elevators that go onto the boat together. What is not said otherwise is as on the standard set.
 *
 * @param id name among the boat's foil sets, for example {@code light}
 * @param mainFoil one of the two equal L-shaped main foils
 * @param rudder one of the two equal rudders with its elevator; sets differ in the elevator
 */
public record FoilSpec(String id, MainFoil mainFoil, Rudder rudder) {
    /** Name of the set that a boat file describes first, in its tables of main foil and rudder. */
    public static final String STANDARD = "standard";
}
