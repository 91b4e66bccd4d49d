package trimwright.platform;

import trimwright.air.WindProfile;
import trimwright.boat.Side;

/**
 * What a state is balanced in.
 *
 * @param wind true wind over height
 * @param windward side that the wind comes from
 * @param foils which main foils are down
 */
public record Conditions(WindProfile wind, Side windward, FoilSet foils) {
    Side leeward() {
        return windward == Side.PORT ? Side.STARBOARD : Side.PORT;
    }
}
