package trimwright.cards;

import java.util.List;
import trimwright.target.TargetBook;

/** All sides of a trim card that are asked for. */
public final class CardSides {
    private CardSides() {}

    /** The sides, in the order of the request, from a book that has the winds. */
    public static List<TrimCard.Side> of(TrimCardRequest request, TargetBook book) {
        return request.sides().stream()
                .map(side -> TrimCard.targets(request, book, side))
                .toList();
    }
}
