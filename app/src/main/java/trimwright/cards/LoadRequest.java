package trimwright.cards;

import java.util.List;
import trimwright.boat.Handling;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;

/**
 * What a load card is wanted of.
 *
 * @param file boat file
 * @param wing one of its wings
 * @param handling who works the controls, of that file
 * @param winds true wind speeds at 10 m (m/s), rising
 * @param lap length of a lap (s)
 * @param fitness shares of full fitness (-)
 */
public record LoadRequest(
        BoatFile file, WingSpec wing, Handling handling, List<Double> winds, double lap, List<Double> fitness) {
    /** Length of a lap where nothing is said (s); chosen, six minutes. */
    public static final double USUAL_LAP = 360;

    /** Fitness where nothing is said (-); chosen, rising. */
    public static final List<Double> USUAL_FITNESS = List.of(0.6, 0.8, 1.0);

    public LoadRequest {
        winds = List.copyOf(winds);
        fitness = List.copyOf(fitness);
    }
}
