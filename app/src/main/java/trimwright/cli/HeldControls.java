package trimwright.cli;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trimwright.boat.Limits;
import trimwright.boat.TrimRange;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.platform.FoilSet;
import trimwright.platform.Variable;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.units.Units;

/**
 * What is stuck on the boat: {@code camber=12}, {@code board=down}.
 *
 * @param controls that are held, with their values (SI)
 * @param foils which main foils are down
 */
record HeldControls(Map<Variable, Double> controls, FoilSet foils) {
    /** The windward board, that cannot be lifted. */
    private static final String BOARD = "board";

    private static final String DOWN = "down";

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

    /** The controls and values (SI) of {@code NAME=VALUE} texts; each within the range of boat and wing. */
    static HeldControls parse(List<String> texts, BoatFile file, WingSpec wing) {
        Map<Variable, Double> held = new EnumMap<>(Variable.class);
        Set<String> named = new HashSet<>();
        FoilSet foils = FoilSet.LEEWARD_DOWN;
        for (String text : texts) {
            String[] parts = text.split("=", 2);
            String name = parts[0].strip();
            Variable variable = NAMES.get(name);
            if (parts.length < 2 || (variable == null && !name.equals(BOARD))) {
                throw new UserInputException(
                        Texts.of("targets.fix", text, String.join(", ", NAMES.keySet()) + ", " + BOARD));
            }
            if (!named.add(name)) {
                throw new UserInputException(Texts.of("targets.fix_twice", name));
            }
            if (variable != null) {
                held.put(variable, value("--fix " + name, variable, parts[1], file, wing));
            } else if (parts[1].strip().equals(DOWN)) {
                foils = FoilSet.BOTH_DOWN;
            } else {
                throw new UserInputException(Texts.of("targets.fix_board", parts[1].strip()));
            }
        }
        checkHead(held, wing.trim());
        return new HeldControls(held, foils);
    }

    /** Camber and twist together say where the head's flap stands. */
    private static void checkHead(Map<Variable, Double> held, TrimRange trim) {
        Double camber = held.get(Variable.CAMBER);
        Double twist = held.get(Variable.TWIST);
        if (camber != null && twist != null && camber - twist < trim.headFlapMin()) {
            throw new UserInputException(
                    Texts.of("targets.fix_head", Units.toDegrees(camber - twist), Units.toDegrees(trim.headFlapMin())));
        }
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
