package trimwright.boat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One boat with the wings it may carry.
 *
 * @param name short lower-case name, for example {@code whimbrel14}
 * @param title the name that people read
 * @param hulls the two hulls
 * @param platform mass of the boat without wing and crew
 * @param crew the crew's mass and place
 * @param wings the wings the boat may carry, at least one
 * @param mainFoil one of the two equal L-shaped main foils
 * @param rudder one of the two equal rudders with its elevator
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
        MainFoil mainFoil,
        Rudder rudder,
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
}
