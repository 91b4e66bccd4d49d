package trimwright.cli;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trimwright.boat.Limits;
import trimwright.boat.TrimRange;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.platform.Variable;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.units.Units;

/** Controls that are held at a value: {@code camber=12}. */
final class HeldControls {
    private static final Map<String, Variable> NAMES = new LinkedHashMap<>();

    static {
        NAMES.put("camber", Variable.CAMBER);
        NAMES.put("twist", Variable.TWIST);
        NAMES.put("twist_mid", Variable.TWIST_MID_RATIO);
        NAMES.put("sheet", Variable.SHEET);
        NAMES.put("heel", Variable.HEEL);
        NAMES.put("ride_height", Variable.RIDE_HEIGHT);
        NAMES.put("pitch", Variable.PITCH);
        NAMES.put("crew", Variable.CREW_PLACE);
    }

    private HeldControls() {}

    /** The controls and values (SI) of {@code NAME=VALUE} texts; each within the range of boat and wing. */
    static Map<Variable, Double> parse(List<String> texts, BoatFile file, WingSpec wing) {
        Map<Variable, Double> held = new EnumMap<>(Variable.class);
        for (String text : texts) {
            String[] parts = text.split("=", 2);
            Variable variable = parts.length == 2 ? NAMES.get(parts[0].strip()) : null;
            if (variable == null) {
                throw new UserInputException(Texts.of("targets.fix", text, String.join(", ", NAMES.keySet())));
            }
            held.put(variable, value("--fix " + parts[0].strip(), variable, parts[1], file, wing));
        }
        return held;
    }

    private static double value(String option, Variable variable, String text, BoatFile file, WingSpec wing) {
        double typed;
        try {
            typed = Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            throw new UserInputException(Texts.of("cli.number", option, text), e);
        }
        TrimRange trim = wing.trim();
        Limits limits = file.boat().limits();
        return switch (variable) {
            case CAMBER -> angle(option, typed, 0, trim.camberMax());
            case TWIST -> angle(option, typed, 0, trim.twistMax());
            case SHEET -> angle(option, typed, 0, trim.sheetMax());
            case HEEL -> angle(option, typed, limits.heelMin(), limits.heelMax());
            case PITCH -> angle(option, typed, limits.pitchMin(), limits.pitchMax());
            case TWIST_MID_RATIO -> NumberCheck.within(option, typed, 0.25, 0.75);
            case RIDE_HEIGHT -> NumberCheck.within(option, typed, limits.rideHeightMin(), limits.rideHeightMax());
            case CREW_PLACE ->
                NumberCheck.within(
                        option,
                        typed,
                        -file.boat().crew().yMax(),
                        file.boat().crew().yMax());
            default -> throw new IllegalStateException("no control of the command line: " + variable);
        };
    }

    private static double angle(String option, double typed, double least, double most) {
        return Units.fromDegrees(NumberCheck.within(option, typed, Units.toDegrees(least), Units.toDegrees(most)));
    }
}
