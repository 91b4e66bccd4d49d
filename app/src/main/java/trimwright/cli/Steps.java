package trimwright.cli;

import java.util.ArrayList;
import java.util.List;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.units.Units;

/** Numbers typed as {@code 12}, {@code 8,10,14} or {@code FROM:TO:STEP}. */
final class Steps {
    /** Chosen: more points than anybody reads. */
    private static final int MOST = 200;

    /** Lets the last step fall on the end in spite of rounding. */
    private static final double ROUNDING = 1e-9;

    private Steps() {}

    /** The numbers, rising, each within the range; else one line that says the option, the text and what is expected. */
    static List<Double> parse(String option, String text, double least, double most) {
        List<Double> values = new ArrayList<>();
        try {
            if (text.contains(":")) {
                String[] parts = text.split(":", -1);
                if (parts.length != 3) {
                    throw new NumberFormatException(text);
                }
                addSteps(values, number(parts[0]), number(parts[1]), number(parts[2]));
            } else {
                for (String part : text.split(",", -1)) {
                    values.add(number(part));
                }
            }
        } catch (NumberFormatException e) {
            throw new UserInputException(Texts.of("cli.steps", option, text), e);
        }
        for (int i = 0; i < values.size(); i++) {
            NumberCheck.within(option, values.get(i), least, most);
            if (i > 0 && !(values.get(i) > values.get(i - 1))) {
                throw new UserInputException(Texts.of("cli.steps", option, text));
            }
        }
        return values;
    }

    /** True wind speeds (m/s), typed in knots: all that targets can be asked for. */
    static List<Double> winds(String option, String text) {
        return parse(option, text, 1, 40).stream().map(Units::fromKnots).toList();
    }

    private static void addSteps(List<Double> values, double from, double to, double step) {
        if (!(step > 0) || !(to >= from) || (to - from) / step > MOST) {
            throw new NumberFormatException(from + ":" + to + ":" + step);
        }
        for (int i = 0; from + i * step <= to + ROUNDING * step; i++) {
            values.add(from + i * step);
        }
    }

    private static double number(String text) {
        double value = Double.parseDouble(text.strip());
        if (!Double.isFinite(value)) {
            throw new NumberFormatException(text);
        }
        return value;
    }
}
