package trimwright.cli;

import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Checks a number that was typed, in the unit it was typed in. */
final class NumberCheck {
    private NumberCheck() {}

    /** The value, or one line that says the option, the value and the range. */
    static double within(String option, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new UserInputException(Texts.of("cli.out_of_range", option, value, least, most));
        }
        return value;
    }
}
