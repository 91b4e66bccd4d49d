package trimwright.drills;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import trimwright.boat.WingSpec;
import trimwright.crew.ComputedHand;
import trimwright.crew.FeelingHand;
import trimwright.crew.Habits;
import trimwright.crew.StillHand;
import trimwright.crew.WingHand;
import trimwright.practice.DrillSetup;
import trimwright.practice.StartTask;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Computed hands that can have the wing in a drill. */
public enum Pilot {
    /** Knows the targets. */
    REFERENCE {
        @Override
        public WingHand hand(WingSpec wing) {
            return new ComputedHand(wing, Habits.NONE, 1);
        }
    },
    /** Sails by heel and pull alone. */
    FEEL {
        @Override
        public WingHand hand(WingSpec wing) {
            return new FeelingHand(wing, Habits.NONE, 1);
        }
    },
    /** Nobody. */
    NONE {
        @Override
        public WingHand hand(WingSpec wing) {
            return new StillHand();
        }
    };

    /** A hand at the wing of a boat with the wind from starboard. */
    abstract WingHand hand(WingSpec wing);

    /** The same in a drill; before a start it holds her back as it knows to. */
    public WingHand hand(DrillSetup setup) {
        StartTask task = setup.drill().startTask(setup.aims(), setup.wind());
        return task == null || this == NONE ? hand(setup.wing()) : StartHands.of(this, setup, task);
    }

    /** As people write it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The pilot of that word; throws {@link UserInputException} naming those there are. */
    public static Pilot of(String word) {
        return Arrays.stream(values())
                .filter(pilot -> pilot.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new UserInputException(Texts.of(
                        "practice.no_pilot",
                        word,
                        Arrays.stream(values()).map(Pilot::word).collect(Collectors.joining(", ")))));
    }
}
