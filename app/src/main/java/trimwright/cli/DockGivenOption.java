package trimwright.cli;

import picocli.CommandLine.Option;
import trimwright.dock.DockGiven;
import trimwright.units.Units;

/** What people measured at the dock themselves. */
public final class DockGivenOption {
    private static final double STEEPEST_DEG = 20;
    private static final double STRONGEST = 200_000;
    private static final double LONGEST = 40;

    @Option(names = "--pull", paramLabel = "N", descriptionKey = "dock.pull")
    private double pull = Double.NaN;

    @Option(names = "--heel", paramLabel = "DEG", descriptionKey = "dock.heel")
    private double heelDeg = Double.NaN;

    @Option(names = "--pitch", paramLabel = "DEG", descriptionKey = "dock.pitch")
    private double pitchDeg = Double.NaN;

    @Option(names = "--antenna-aft", paramLabel = "M", descriptionKey = "dock.antenna_aft")
    private double antennaAft = Double.NaN;

    @Option(names = "--antenna-starboard", paramLabel = "M", descriptionKey = "dock.antenna_starboard")
    private double antennaStarboard = Double.NaN;

    DockGiven given() {
        within("--pull", pull, 1, STRONGEST);
        within("--heel", heelDeg, -STEEPEST_DEG, STEEPEST_DEG);
        within("--pitch", pitchDeg, -STEEPEST_DEG, STEEPEST_DEG);
        within("--antenna-aft", antennaAft, 0, LONGEST);
        within("--antenna-starboard", antennaStarboard, -LONGEST, LONGEST);
        return new DockGiven(
                Units.fromDegrees(heelDeg), Units.fromDegrees(pitchDeg), pull, antennaAft, antennaStarboard);
    }

    private static void within(String option, double value, double least, double most) {
        if (!Double.isNaN(value)) {
            NumberCheck.within(option, value, least, most);
        }
    }
}
