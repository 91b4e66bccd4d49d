package trimwright.boat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One boat with the wings and foil sets it may carry.
 *
 * @param name short lower-case name, for example {@code whimbrel14}
 * @param title the name that people read
 * @param hulls the two hulls
 * @param platform mass of the boat without wing and crew
 * @param crew the crew's mass and place
 * @param wings the wings the boat may carry, at least one
 * @param foils the foil set that she sails with
 * @param foilSets all foil sets that she may sail with, that one among them
 * @param windage drag of all that is neither wing nor in the water
 * @param limits what must not be passed
 * @param windSensor where the wind is measured
 * @param antenna where position is measured
 * @param handling who works the controls and how fast they go; null where the file does not say
 */
public record Boat(
        String name,
        String title,
        Hulls hulls,
        Mass platform,
        Crew crew,
        List<WingSpec> wings,
        FoilSpec foils,
        List<FoilSpec> foilSets,
        Windage windage,
        Limits limits,
        WindSensor windSensor,
        Antenna antenna,
        @Nullable Handling handling) {
    public Boat {
        wings = List.copyOf(wings);
        if (wings.isEmpty()) {
            throw new IllegalArgumentException("a boat carries at least one wing");
        }
        foilSets = List.copyOf(foilSets);
        if (!foilSets.contains(foils)) {
            throw new IllegalArgumentException("foil set " + foils.id() + " is none of boat " + name);
        }
    }

    /** The wing of that id; throws {@link IllegalArgumentException} if the boat has none such. */
    public WingSpec getWing(String id) {
        for (WingSpec wing : wings) {
            if (wing.id().equals(id)) {
                return wing;
            }
        }
        throw new IllegalArgumentException("no wing " + id + " on boat " + name);
    }

    /** One of the two equal L-shaped main foils of the set that she sails with. */
    public MainFoil mainFoil() {
        return foils.mainFoil();
    }

    /** One of the two equal rudders with the elevator of the set that she sails with. */
    public Rudder rudder() {
        return foils.rudder();
    }

    /** The foil set of that id; null if the boat has none such. */
    public @Nullable FoilSpec findFoils(String id) {
        for (FoilSpec set : foilSets) {
            if (set.id().equals(id)) {
                return set;
            }
        }
        return null;
    }

    /** The same boat with another of her foil sets. */
    public Boat withFoils(FoilSpec other) {
        return new Boat(
                name,
                title,
                hulls,
                platform,
                crew,
                wings,
                other,
                foilSets,
                windage,
                limits,
                windSensor,
                antenna,
                handling);
    }

    /** The same boat with another crew. */
    public Boat withCrew(Crew other) {
        return new Boat(
                name,
                title,
                hulls,
                platform,
                other,
                wings,
                foils,
                foilSets,
                windage,
                limits,
                windSensor,
                antenna,
                handling);
    }
}
