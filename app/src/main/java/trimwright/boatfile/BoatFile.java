package trimwright.boatfile;

import trimwright.boat.Boat;
import trimwright.boat.BoatMarks;
import trimwright.boat.Crew;

/**
 * A boat and the file that described it.
 *
 * @param boat the boat, checked
 * @param marks what her crew reads on her controls
 * @param text the file as it stands
 * @param hash first 16 hexadecimal digits of the SHA-256 of the file's bytes: names the file in every result
 */
public record BoatFile(Boat boat, BoatMarks marks, String text, String hash) {
    /**
     * The same boat with another crew of as many people. The file's name in results stays; its text says what was changed, so that
     * nothing kept of the file itself is taken for this boat's.
     *
     * @param mass of all of them (kg)
     */
    public BoatFile withCrewMass(double mass) {
        Crew crew = boat.crew();
        if (mass == crew.mass()) {
            return this;
        }
        Crew other = new Crew(crew.count(), mass / crew.count(), crew.x(), crew.yMax(), crew.height());
        Boat changed = new Boat(
                boat.name(),
                boat.title(),
                boat.hulls(),
                boat.platform(),
                other,
                boat.wings(),
                boat.mainFoil(),
                boat.rudder(),
                boat.windage(),
                boat.limits(),
                boat.windSensor(),
                boat.antenna(),
                boat.handling());
        return new BoatFile(changed, marks, text + "\n# crew of " + mass + " kg\n", hash);
    }
}
