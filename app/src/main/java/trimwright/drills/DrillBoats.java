package trimwright.drills;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.crew.SailingAims;
import trimwright.crew.TurnKind;
import trimwright.practice.Drill;
import trimwright.practice.DrillSetup;
import trimwright.raceday.AimsCard;
import trimwright.response.ResponseFit;
import trimwright.response.SpeedResponse;
import trimwright.start.StartSetup;
import trimwright.target.TargetBook;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnSetup;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** Boats ready to be sailed in drills: a boat file, a wing and the card of its target book. */
public final class DrillBoats {
    /** Winds in which a drill can be sailed (kn): chosen; a crew with a foiling card only is lost below. */
    public static final double LEAST_WIND = 10;

    public static final double MOST_WIND = 24;

    /** Temperature of the sea (K): that of the standard atmosphere, as for the targets. */
    private static final double TEMPERATURE = Units.fromCelsius(15);

    private DrillBoats() {}

    /**
     * A drill in a wind.
     *
     * @param book targets of that boat and wing
     * @param wind at 10 m (m/s)
     * @throws UserInputException where the book has no foiling target, or none in that wind
     */
    public static DrillSetup setup(Drill drill, BoatFile file, WingSpec wing, TargetBook book, double wind, long seed) {
        SailingAims aims = aims(file, wing, book);
        return new DrillSetup(
                drill, file.boat(), wing, aims, AirState.STANDARD, WaterState.sea(TEMPERATURE), wind, seed);
    }

    /**
     * A turn in a wind.
     *
     * @param begin how she comes to it
     * @param book targets of that boat and wing
     * @param wind at 10 m (m/s)
     * @param intensity standard deviation of turbulence over the mean wind (-)
     * @throws UserInputException where the book has no foiling target
     */
    public static TurnSetup turn(
            TurnKind kind,
            TurnBegin begin,
            BoatFile file,
            WingSpec wing,
            TargetBook book,
            double wind,
            double intensity) {
        SailingAims aims = aims(file, wing, book);
        return new TurnSetup(
                kind,
                begin,
                file.boat(),
                wing,
                aims,
                AirState.STANDARD,
                WaterState.sea(TEMPERATURE),
                wind,
                intensity,
                begin == TurnBegin.FOILS ? TurnSetup.Touching.SPOILS : TurnSetup.Touching.PLANNED);
    }

    /**
     * A start in a wind.
     *
     * @param book targets of that boat and wing
     * @param wind at 10 m (m/s)
     * @param intensity standard deviation of turbulence over the mean wind (-)
     * @param angle from the course across the line to the wind (rad)
     * @throws UserInputException where the book has no foiling target
     */
    public static StartSetup start(
            BoatFile file, WingSpec wing, TargetBook book, double wind, double intensity, double angle) {
        SailingAims aims = aims(file, wing, book);
        return new StartSetup(
                file.boat(), wing, aims, AirState.STANDARD, WaterState.sea(TEMPERATURE), wind, intensity, angle);
    }

    /**
     * How the boat's speed follows the wind, fitted to the motion model; some seconds of work.
     *
     * @param book targets of that boat and wing
     * @return null where the book has no foiling target, or she holds hers in no wind that is tried
     */
    public static @Nullable SpeedResponse response(BoatFile file, WingSpec wing, TargetBook book) {
        SailingAims aims;
        try {
            aims = AimsCard.of(book);
        } catch (IllegalArgumentException e) {
            return null;
        }
        return ResponseFit.of(file.boat(), wing, aims, AirState.STANDARD, WaterState.sea(TEMPERATURE));
    }

    private static SailingAims aims(BoatFile file, WingSpec wing, TargetBook book) {
        try {
            return AimsCard.of(book);
        } catch (IllegalArgumentException e) {
            throw new UserInputException(
                    Texts.of("practice.no_targets", file.boat().title(), wing.id()), e);
        }
    }

    /** As people write it. */
    public static String word(Drill drill) {
        return drill.name().toLowerCase(Locale.ROOT);
    }

    /** Words of all drills. */
    public static List<String> words() {
        return Arrays.stream(Drill.values()).map(DrillBoats::word).toList();
    }

    /** The drill of that word; throws {@link UserInputException} naming those there are. */
    public static Drill drill(String word) {
        return Arrays.stream(Drill.values())
                .filter(drill -> word(drill).equals(word))
                .findFirst()
                .orElseThrow(() -> new UserInputException(
                        Texts.of("practice.no_drill", word, words().stream().collect(Collectors.joining(", ")))));
    }
}
