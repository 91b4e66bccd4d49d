package trimwright.cards;

import java.time.LocalDate;
import java.util.List;
import trimwright.aim.Gustiness;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.SectionSource;

/**
 * What a trim card is wanted of.
 *
 * @param file boat file
 * @param wing one of its wings
 * @param winds true wind speeds at 10 m (m/s), rising, at most {@link #MOST_WINDS}
 * @param sides what is printed, at least one
 * @param date that stands on the card
 * @param turbulence that aims are made for (-)
 * @param section where the flow about the wing's sections comes from
 */
public record TrimCardRequest(
        BoatFile file,
        WingSpec wing,
        List<Double> winds,
        List<CardSide> sides,
        LocalDate date,
        double turbulence,
        SectionSource section) {
    /** More rows would need type that nobody reads at arm's length on a wet boat. */
    public static final int MOST_WINDS = 5;

    /** In the usual turbulence, with sections in closed form. */
    public TrimCardRequest(BoatFile file, WingSpec wing, List<Double> winds, List<CardSide> sides, LocalDate date) {
        this(file, wing, winds, sides, date, Gustiness.TURBULENCE, SectionSource.CLOSED_FORM);
    }

    public TrimCardRequest {
        winds = List.copyOf(winds);
        sides = List.copyOf(sides);
        if (winds.isEmpty() || winds.size() > MOST_WINDS || sides.isEmpty()) {
            throw new IllegalArgumentException("a card has one to five winds and at least a side");
        }
    }
}
