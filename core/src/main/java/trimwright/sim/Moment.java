package trimwright.sim;

/**
 * What truly is at one instant where the instruments stand.
 *
 * @param time since the day's zero (s)
 * @param north of the antenna (m)
 * @param east of the antenna (m)
 * @param velocityNorth of the antenna over ground (m/s)
 * @param velocityEast of the antenna over ground (m/s)
 * @param heading (rad)
 * @param rateOfTurn (rad/s)
 * @param roll (rad)
 * @param pitch (rad)
 * @param windAhead where the air at the sensor comes from, body x (m/s): positive from ahead
 * @param windAbeam the same, body y: positive from starboard (m/s)
 * @param sensorTurned angle of the sensor's zero from the bow, to starboard (rad)
 * @param liftCoefficient of the whole wing, positive lifts to port (-)
 * @param camber signed (rad)
 * @param twist signed (rad)
 * @param sheet signed (rad)
 * @param sheetLoad (N), zero when slack
 * @param rideHeight (m)
 */
record Moment(
        double time,
        double north,
        double east,
        double velocityNorth,
        double velocityEast,
        double heading,
        double rateOfTurn,
        double roll,
        double pitch,
        double windAhead,
        double windAbeam,
        double sensorTurned,
        double liftCoefficient,
        double camber,
        double twist,
        double sheet,
        double sheetLoad,
        double rideHeight) {}
