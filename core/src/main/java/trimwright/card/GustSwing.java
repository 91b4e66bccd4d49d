package trimwright.card;

import trimwright.air.GustShape;

/**
 * A gust or lull in time, from the motion model with its lag of lift and the wing's own damping of roll. Driver and flight
 * controller hold heading, height and pitch; the wing is left alone or trimmed by one act.
 *
 * @param shape of the gust
 * @param length of the shape (s); 0 where it is there at once
 * @param heelAfterOne heel one second after it began (rad), positive to windward
 * @param heelAfterTwo two seconds after (rad)
 * @param heelAfterFour four seconds after (rad)
 * @param speedGained in four seconds (m/s)
 * @param leastHeel while told (rad)
 * @param mostHeel while told (rad)
 * @param secondsToLimit until heel passes the boat file's bound (s): the least heel in a gust, the largest in a lull; infinite where
 *     it does not while told
 * @param mostMoment largest heeling moment of the air while told, over that before (-)
 * @param leastStallMargin of the wing while told (rad), negative where stalled
 */
public record GustSwing(
        GustShape shape,
        double length,
        double heelAfterOne,
        double heelAfterTwo,
        double heelAfterFour,
        double speedGained,
        double leastHeel,
        double mostHeel,
        double secondsToLimit,
        double mostMoment,
        double leastStallMargin) {
    /** How long is told at least (s). */
    public static final double TOLD = 4;
}
