package trimwright.card;

import trimwright.platform.FoilSet;
import trimwright.platform.SailingState;

/**
 * The fastest state on the hulls, where a boat may leave the water.
 *
 * @param foils which main foils are down
 * @param state with speed, angle, trim, heel and crew
 * @param isUp whether the hulls carry no more than a tenth of her, so that she does not stay on them
 */
public record LiftOff(FoilSet foils, SailingState state, boolean isUp) {}
