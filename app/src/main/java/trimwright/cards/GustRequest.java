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
 * @param changesKn of the wind (kn), rising, none zero, each leaving some wind
 */
public record GustRequest(
        BoatFile file,
        WingSpec wing,
        Handling handling,
        double windKn,
        @Nullable Double angleDeg,
        List<Double> changesKn) {
    public GustRequest {
        changesKn = List.copyOf(changesKn);
    }

    /** All winds that targets are needed in (m/s), rising. */
    public List<Double> winds() {
        return Stream.concat(Stream.of(windKn), changesKn.stream().map(change -> windKn + change))
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
