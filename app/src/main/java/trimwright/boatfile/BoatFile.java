package trimwright.boatfile;

import java.util.stream.Collectors;
import trimwright.boat.Boat;
import trimwright.boat.BoatMarks;
import trimwright.boat.Crew;
import trimwright.boat.FoilSpec;
import trimwright.boat.WingSpec;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * A boat and the file that described it.
 *
 * @param boat the boat, checked
 * @param marks what her crew reads on her controls
 * @param text the file as it stands
 * @param hash first 16 hexadecimal digits of the SHA-256 of the file's bytes: names the file in every result
 */
public record BoatFile(Boat boat, BoatMarks marks, String text, String hash) {
    /** Mass of one of the crew that a boat file allows (kg). */
    private static final double LIGHTEST = 40;

    private static final double HEAVIEST = 140;

    /**
     * The same boat with another crew of as many people. The file's name in results stays; its text says what was changed, so that
     * nothing kept of the file itself is taken for this boat's.
     *
     * @param mass of all of them (kg)
     * @throws UserInputException where no such people are
     */
    public BoatFile withCrewMass(double mass) {
        Crew crew = boat.crew();
        int people = crew.count();
        if (!(mass >= people * LIGHTEST && mass <= people * HEAVIEST)) {
            throw new UserInputException(
                    Texts.of("boatfile.crew_mass", mass, people, people * LIGHTEST, people * HEAVIEST));
        }
        if (mass == crew.mass()) {
            return this;
        }
        Crew other = new Crew(people, mass / people, crew.x(), crew.yMax(), crew.height());
        return new BoatFile(boat.withCrew(other), marks, text + "\n# crew of " + mass + " kg\n", hash);
    }

    /**
     * The same boat with another of its foil sets; its text says so, as for another crew.
     *
     * @throws UserInputException where the file has no set of that id
     */
    public BoatFile withFoils(String id) {
        FoilSpec set = boat.findFoils(id);
        if (set == null) {
            String known = boat.foilSets().stream().map(FoilSpec::id).collect(Collectors.joining(", "));
            throw new UserInputException(Texts.of("boatfile.no_foils", id, boat.name(), known));
        }
        return set.equals(boat.foils())
                ? this
                : new BoatFile(boat.withFoils(set), marks, text + "\n# foil set " + id + "\n", hash);
    }

    /** For titles: the wing's name, that of the foil set where the file has several, and the crew's mass. */
    public String words(WingSpec wing) {
        String foils = boat.foilSets().size() > 1
                ? Texts.of("boatfile.words_foils", boat.foils().id())
                : "";
        return Texts.of("boatfile.words", wing.id(), foils, boat.crew().mass());
    }

    /** The boat as she sails, in a few words that tell apart what the file's name does not: file, foil set and crew. */
    public String setup() {
        return hash + " " + boat.foils().id() + " " + boat.crew().mass();
    }
}
