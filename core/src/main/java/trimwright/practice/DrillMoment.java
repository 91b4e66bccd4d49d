package trimwright.practice;

import org.jspecify.annotations.Nullable;
import trimwright.crew.Aim;
import trimwright.crew.Sight;
import trimwright.crew.TurnOrder;

/**
 * One instant of a drill.
 *
 * @param time since the drill began (s), negative while the computed hand still sails
 * @param sight of the boat
 * @param aim of the crew's card for the wind and angle of this instant
 * @param progress towards where she sails (m/s)
 * @param bestProgress that the card promises in the wind as the crew knows it (m/s)
 * @param lost so far (s)
 * @param toGun time to the start signal (s), NaN where there is none
 * @param toLine way to the start line (m), NaN where there is none
 * @param turn under way, null in straight sailing
 * @param slides whether air stands on a shaft or rudder, so that it has lost most of its side force
 */
public record DrillMoment(
        double time,
        Sight sight,
        Aim aim,
        double progress,
        double bestProgress,
        double lost,
        double toGun,
        double toLine,
        @Nullable TurnOrder turn,
        boolean slides) {}
