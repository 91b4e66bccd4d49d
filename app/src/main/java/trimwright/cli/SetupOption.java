package trimwright.cli;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import trimwright.boatfile.BoatFile;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** With which of her foil sets and with how heavy a crew the boat sails. */
public final class SetupOption {
    @Option(names = "--foils", paramLabel = "ID", descriptionKey = "common.foils")
    private @Nullable String foils;

    @Option(names = "--crew-mass", paramLabel = "KG", descriptionKey = "common.crew_mass")
    private @Nullable Double crewMass;

    /** No boat; one line where a set or a crew was named all the same. */
    @Nullable
    BoatFile withoutBoat() {
        if (foils != null || crewMass != null) {
            throw new UserInputException(Texts.of("cli.setup_of_no_boat"));
        }
        return null;
    }

    /** The boat so; one line where she has no such set or no such crew. */
    public BoatFile of(BoatFile file) {
        BoatFile fitted = foils == null ? file : file.withFoils(foils);
        return crewMass == null ? fitted : fitted.withCrewMass(crewMass);
    }
}
