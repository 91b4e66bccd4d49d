package trimwright.cards;

import java.util.List;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;

/**
 * What a take-off card is wanted of.
 *
 * @param file boat file
 * @param wing one of its wings
 * @param winds true wind speeds at 10 m (m/s), rising
 */
public record TakeOffRequest(BoatFile file, WingSpec wing, List<Double> winds) {
    public TakeOffRequest {
        winds = List.copyOf(winds);
    }
}
