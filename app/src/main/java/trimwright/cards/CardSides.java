package trimwright.cards;

import java.util.List;
import trimwright.platform.Platform;
import trimwright.prepare.InParallel;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetRun;
import trimwright.target.TargetBook;

/** All sides of a trim card that are asked for. */
public final class CardSides {
    private CardSides() {}

    /**
     * The sides, in the order of the request.
     *
     * @param sections that the book was computed with
     * @param book that has the winds
     */
    public static List<TrimCard.Side> of(TrimCardRequest request, Sections sections, TargetBook book)
            throws InterruptedException {
        Platform platform = TargetRun.platformOf(request.file().boat(), request.wing(), sections);
        return InParallel.map("card", request.sides(), side -> side(request, platform, book, side));
    }

    private static TrimCard.Side side(TrimCardRequest request, Platform platform, TargetBook book, CardSide side) {
        return switch (side) {
            case UPWIND, DOWNWIND, REACH -> new TargetSide(request, platform).of(book, side);
            case GUSTS_UPWIND, GUSTS_DOWNWIND ->
                new GustSide(request, HandlingOf.boat(request.file()), platform).of(book, side);
            case LOADS -> new LoadSide(request, HandlingOf.boat(request.file()), platform).of(book, side);
        };
    }
}
