package trimwright.prepare;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.air.WindProfile;
import trimwright.boat.Side;
import trimwright.boat.WingSpec;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Pose;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.TrimSetting;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/**
 * A wing as it is set, in a wind.
 *
 * @param sailing trim, how the boat lies, and its motion; only what concerns the wing
 * @param conditions the wind. An apparent wind is one wind at all heights on a boat at rest
 * @param given which wind was given
 */
public record WingState(SailingState sailing, Conditions conditions, GivenWind given) {
    private static final List<WingInput> TRUE =
            List.of(WingInput.TRUE_WIND_SPEED, WingInput.TRUE_WIND_ANGLE, WingInput.BOAT_SPEED);
    private static final List<WingInput> APPARENT =
            List.of(WingInput.APPARENT_WIND_SPEED, WingInput.APPARENT_WIND_ANGLE);
    private static final Map<WingInput, Variable> VARIABLES = new EnumMap<>(Map.of(
            WingInput.BOAT_SPEED, Variable.BOAT_SPEED,
            WingInput.LEEWAY, Variable.LEEWAY,
            WingInput.CAMBER, Variable.CAMBER,
            WingInput.TWIST, Variable.TWIST,
            WingInput.TWIST_MID_RATIO, Variable.TWIST_MID_RATIO,
            WingInput.SHEET, Variable.SHEET,
            WingInput.HEEL, Variable.HEEL,
            WingInput.RIDE_HEIGHT, Variable.RIDE_HEIGHT,
            WingInput.PITCH, Variable.PITCH));
    /** Where nothing is said: a boat just clear of the water. */
    private static final double RIDE_HEIGHT = 1;

    /** Which of the two winds a state was given by. */
    public enum GivenWind {
        TRUE,
        APPARENT
    }

    /**
     * The state that a person gave.
     *
     * @param typed in the units of the keys. Camber, sheet and one of the winds are needed: apparent speed and angle, or
     *     true speed and angle and the boat's speed. What else is left out is zero, twist even, ride height 1 m
     * @param named what the person calls an input, for the line that says what is wrong
     * @throws UserInputException if something is missing or outside its range
     */
    public static WingState of(WingSpec wing, Map<WingInput, Double> typed, Function<WingInput, String> named) {
        boolean isTrue = TRUE.stream().anyMatch(typed::containsKey) || typed.containsKey(WingInput.LEEWAY);
        boolean isApparent = APPARENT.stream().anyMatch(typed::containsKey);
        if (isTrue == isApparent || !typed.keySet().containsAll(isTrue ? TRUE : APPARENT)) {
            throw new UserInputException(Texts.of(
                    "wing.which_wind",
                    named.apply(WingInput.APPARENT_WIND_SPEED),
                    named.apply(WingInput.APPARENT_WIND_ANGLE),
                    named.apply(WingInput.TRUE_WIND_SPEED),
                    named.apply(WingInput.TRUE_WIND_ANGLE),
                    named.apply(WingInput.BOAT_SPEED)));
        }
        WingInput speed = isTrue ? WingInput.TRUE_WIND_SPEED : WingInput.APPARENT_WIND_SPEED;
        WingInput angle = isTrue ? WingInput.TRUE_WIND_ANGLE : WingInput.APPARENT_WIND_ANGLE;
        double windSpeed = needed(wing, speed, typed, named);
        double windAngle = needed(wing, angle, typed, named);
        needed(wing, WingInput.CAMBER, typed, named);
        needed(wing, WingInput.SHEET, typed, named);
        SailingState sailing = SailingState.upright().with(Variable.RIDE_HEIGHT, RIDE_HEIGHT);
        for (Map.Entry<WingInput, Double> one : typed.entrySet()) {
            double value = checked(wing, one.getKey(), one.getValue(), named);
            Variable variable = VARIABLES.get(one.getKey());
            if (variable != null) {
                sailing = sailing.with(variable, value);
            }
        }
        WindProfile wind = isTrue ? WindProfile.overSea(windSpeed) : WindProfile.uniform(windSpeed);
        return new WingState(
                sailing.with(Variable.TRUE_WIND_ANGLE, Math.abs(windAngle)),
                new Conditions(wind, windAngle < 0 ? Side.PORT : Side.STARBOARD, FoilSet.LEEWARD_DOWN),
                isTrue ? GivenWind.TRUE : GivenWind.APPARENT);
    }

    private static double needed(
            WingSpec wing, WingInput input, Map<WingInput, Double> typed, Function<WingInput, String> named) {
        Double given = typed.get(input);
        if (given == null) {
            throw new UserInputException(Texts.of("wing.missing", named.apply(input)));
        }
        return checked(wing, input, given, named);
    }

    private static double checked(WingSpec wing, WingInput input, double typed, Function<WingInput, String> named) {
        double low = input.low(wing);
        double high = input.high(wing);
        if (!(typed >= low && typed <= high)) {
            throw new UserInputException(Texts.of("cli.out_of_range", named.apply(input), typed, low, high));
        }
        return input.toSi(typed);
    }

    /** How the wing is set. */
    public TrimSetting trim() {
        return new TrimSetting(
                sailing.get(Variable.CAMBER),
                sailing.get(Variable.TWIST),
                sailing.get(Variable.TWIST_MID_RATIO),
                sailing.get(Variable.SHEET));
    }

    /** +1 for wind from starboard, -1 from port. */
    int tack() {
        return conditions.windward().sign();
    }

    /** Wind felt at the height at which winds are stated, from the bow, positive from starboard. */
    ApparentWind apparentWind() {
        Pose pose = Pose.of(sailing, conditions.windward());
        return new TrueWind(conditions.wind().referenceSpeed(), tack() * sailing.trueWindAngleToBow())
                .apparent(pose.ahead(), pose.abeam());
    }

    /** The value of an input that has no part in the wind's speed and angle, in the unit of its key. */
    double typed(WingInput input) {
        Variable variable = VARIABLES.get(input);
        if (variable == null) {
            throw new IllegalArgumentException(input + " is a wind");
        }
        return input.fromSi(sailing.get(variable));
    }
}
