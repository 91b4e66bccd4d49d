package trimwright.cli;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.drills.DrillBoats;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.target.TargetBook;
import trimwright.units.Units;

/** Which boat is sailed by a computed crew, with which wing, in which wind. */
public final class DrillOptions {
    @Mixin
    private final WingOption wing = new WingOption();

    @Mixin
    private final SetupOption setup = new SetupOption();

    @Option(names = "--boat", paramLabel = "BOAT", defaultValue = "whimbrel14", descriptionKey = "practice.boat")
    private String boat = "";

    @Option(names = "--tws", paramLabel = "KN", defaultValue = "14", descriptionKey = "practice.tws")
    private double tws;

    /** Throws where nobody could sail in that wind. */
    void check() {
        NumberCheck.within("--tws", tws, DrillBoats.LEAST_WIND, DrillBoats.MOST_WIND);
    }

    BoatFile file() {
        return setup.of(BoatFiles.find(boat));
    }

    WingSpec wing(BoatFile file) {
        return wing.of(file.boat());
    }

    /** The targets of that boat and wing. */
    TargetBook book(BoatFile file, TargetBooks books, Console console) throws InterruptedException {
        return console.book(books, TargetRequest.of(file, wing(file)));
    }

    /** At 10 m (m/s). */
    double wind() {
        return Units.fromKnots(tws);
    }
}
