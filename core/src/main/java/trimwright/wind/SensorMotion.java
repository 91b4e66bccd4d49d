package trimwright.wind;

import org.jspecify.annotations.Nullable;
import trimwright.air.ApparentWind;
import trimwright.boat.WindSensor;

/**
 * The sensor's own motion when the boat turns about its axes, omega x r, in boat axes with the sensor at (x, 0, -height).
 * The middle of rotation is taken at the hulls' bottom below the foils, which is where the boat file measures from.
 */
final class SensorMotion {
    static final SensorMotion NONE = new SensorMotion(null, new double[0], new double[0], new double[0]);

    private final @Nullable WindSensor sensor;
    private final double[] rollRate;
    private final double[] pitchRate;
    private final double[] yawRate;

    SensorMotion(@Nullable WindSensor sensor, double[] rollRate, double[] pitchRate, double[] yawRate) {
        this.sensor = sensor;
        this.rollRate = rollRate;
        this.pitchRate = pitchRate;
        this.yawRate = yawRate;
    }

    /** The wind that a sensor not swinging would feel at that instant. An unknown rate counts as none. */
    ApparentWind removedFrom(ApparentWind felt, int i) {
        if (sensor == null) {
            return felt;
        }
        double ahead = -or0(pitchRate[i]) * sensor.height();
        double starboard = or0(yawRate[i]) * sensor.x() + or0(rollRate[i]) * sensor.height();
        double x = felt.speed() * StrictMath.cos(felt.angle()) - ahead;
        double y = felt.speed() * StrictMath.sin(felt.angle()) - starboard;
        return ApparentWind.fromComponents(x, y);
    }

    private static double or0(double rate) {
        return Double.isNaN(rate) ? 0 : rate;
    }
}
