package trimwright.sim;

import java.util.List;
import trimwright.crew.OtherBoat;
import trimwright.weather.WakeTrail;

/**
 * What boats know of each other and feel of each other during one block of time: how all stood at its beginning.
 *
 * @param boats as seen, in the order of the day's entries
 * @param wakes of their wings, in the same order
 */
public record Fleet(List<OtherBoat> boats, List<WakeTrail> wakes) {
    public Fleet {
        boats = List.copyOf(boats);
        wakes = List.copyOf(wakes);
    }
}
