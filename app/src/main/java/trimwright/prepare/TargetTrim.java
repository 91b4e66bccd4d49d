package trimwright.prepare;

import java.util.EnumMap;
import java.util.Map;
import trimwright.target.Attitude;
import trimwright.target.Target;
import trimwright.target.TargetPoint;
import trimwright.target.TrimSetting;

/** A target as a state of the wing: its wind, speed, trim and attitude as a person would type them. */
public final class TargetTrim {
    private TargetTrim() {}

    /** The inputs, in the units of their keys, wind from starboard. */
    public static Map<WingInput, Double> of(TargetPoint point) {
        Target target = point.getTarget();
        TrimSetting trim = target.trim();
        Attitude attitude = target.attitude();
        Map<WingInput, Double> inputs = new EnumMap<>(WingInput.class);
        put(inputs, WingInput.TRUE_WIND_SPEED, point.trueWindSpeed());
        put(inputs, WingInput.TRUE_WIND_ANGLE, point.trueWindAngle());
        put(inputs, WingInput.BOAT_SPEED, target.boatSpeed());
        put(inputs, WingInput.LEEWAY, attitude.leeway());
        put(inputs, WingInput.CAMBER, trim.camber());
        put(inputs, WingInput.TWIST, trim.twist());
        put(inputs, WingInput.TWIST_MID_RATIO, trim.twistMidRatio());
        put(inputs, WingInput.SHEET, trim.sheet());
        put(inputs, WingInput.HEEL, attitude.heel());
        put(inputs, WingInput.RIDE_HEIGHT, attitude.rideHeight());
        put(inputs, WingInput.PITCH, attitude.pitch());
        return inputs;
    }

    private static void put(Map<WingInput, Double> inputs, WingInput input, double value) {
        inputs.put(input, input.fromSi(value));
    }
}
