package trimwright.cards;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Handling;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.units.Units;

/**
 * What a gust card is wanted of.
 *
 * @param file boat file
 * @param wing one of its wings
 * @param handling who works the controls, of that file
 * @param windKn true wind speed at 10 m (kn)
 * @param angleDeg true wind angle to the course (deg); null: best upwind and best downwind
 * @param changes of the wind, each leaving some wind
 */
public record GustRequest(
        BoatFile file,
        WingSpec wing,
        Handling handling,
        double windKn,
        @Nullable Double angleDeg,
        List<Change> changes) {
    /** Shift that may come with a puff where none is asked for (deg): chosen, what a crew sees as a small one. */
    private static final double USUAL_SHIFT_DEG = 5;

    public GustRequest {
        changes = List.copyOf(changes);
    }

    /**
     * One change of the wind.
     *
     * @param windKn of the true wind speed (kn), not zero
     * @param shiftDeg of its direction (deg), positive aft
     */
    public record Change(double windKn, double shiftDeg) {}

    /** Each change of speed (kn) with each shift (deg). */
    public static List<Change> each(List<Double> changesKn, List<Double> shiftsDeg) {
        return changesKn.stream()
                .flatMap(change -> shiftsDeg.stream().map(shift -> new Change(change, shift)))
                .toList();
    }

    /** Each change of speed (kn) by itself, and then each gust with a usual shift to either side. */
    public static List<Change> usual(List<Double> changesKn) {
        List<Double> gusts = changesKn.stream().filter(change -> change > 0).toList();
        return Stream.concat(
                        each(changesKn, List.of(0.0)).stream(),
                        each(gusts, List.of(-USUAL_SHIFT_DEG, USUAL_SHIFT_DEG)).stream())
                .toList();
    }

    /** All winds that targets are needed in (m/s), rising. */
    public List<Double> winds() {
        return Stream.concat(Stream.of(windKn), changes.stream().map(change -> windKn + change.windKn()))
                .distinct()
                .sorted()
                .map(Units::fromKnots)
                .toList();
    }

    /** A wind after a change (m/s), the very number that {@link #winds()} has. */
    public double windAfter(double changeKn) {
        return Units.fromKnots(windKn + changeKn);
    }
}
