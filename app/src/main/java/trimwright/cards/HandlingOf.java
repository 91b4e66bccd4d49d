package trimwright.cards;

import trimwright.boat.Handling;
import trimwright.boatfile.BoatFile;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Asks a boat file for what not every boat file has. */
public final class HandlingOf {
    private HandlingOf() {}

    /** Who works the controls; one line where the file does not say. */
    public static Handling boat(BoatFile file) {
        Handling handling = file.boat().handling();
        if (handling == null) {
            throw new UserInputException(Texts.of("cli.no_handling", file.boat().name()));
        }
        return handling;
    }
}
