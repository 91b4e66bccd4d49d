package trimwright.sim;

/**
 * The truth about one boat at one instant.
 *
 * @param time since the day's zero (s)
 * @param bowNorth place of the bow (m)
 * @param bowEast place of the bow (m)
 * @param windSpeed true wind at 10 m at the boat, wakes of others included (m/s)
 * @param windFrom direction of that wind (rad)
 * @param wakeLoss what the wakes of others took from the speed of the wind (m/s)
 * @param speed through the water (m/s)
 * @param heading (rad)
 * @param leeway to leeward (rad)
 * @param roll (rad)
 * @param rideHeight (m)
 * @param flying 1 hulls clear of the water, else 0
 * @param sheet signed (rad)
 * @param camber signed (rad)
 * @param twist signed (rad)
 * @param heeling moment of the air, signed (N m)
 * @param leg -1 before the start
 * @param turning 1 in a turn, else 0
 */
public record TrueState(
        double time,
        double bowNorth,
        double bowEast,
        double windSpeed,
        double windFrom,
        double wakeLoss,
        double speed,
        double heading,
        double leeway,
        double roll,
        double rideHeight,
        int flying,
        double sheet,
        double camber,
        double twist,
        double heeling,
        int leg,
        int turning) {}
