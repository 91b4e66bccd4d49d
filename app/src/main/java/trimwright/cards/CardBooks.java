package trimwright.cards;

import java.util.List;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.SectionSource;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.target.TargetBook;
import trimwright.target.TargetGrid;
import trimwright.text.Progress;

/**
 * Books that cards are made from. A wind's targets do not depend on the other winds of a book, so the default book serves where
 * it is kept and has the winds; else only the winds asked are computed.
 */
public final class CardBooks {
    private CardBooks() {}

    /** A book that has these winds (m/s) among its own, all default angles, all controls free. */
    public static TargetBook of(
            TargetBooks books,
            BoatFile file,
            WingSpec wing,
            SectionSource section,
            List<Double> winds,
            Progress progress)
            throws InterruptedException {
        TargetGrid whole = TargetRequest.defaultGrid();
        if (whole.winds().containsAll(winds)) {
            TargetBook kept = books.find(TargetRequest.of(file, wing, whole, section));
            if (kept != null) {
                return kept;
            }
        }
        return exactly(books, file, wing, section, winds, progress);
    }

    /** A book of these winds (m/s) and no others, all default angles, all controls free. */
    public static TargetBook exactly(
            TargetBooks books,
            BoatFile file,
            WingSpec wing,
            SectionSource section,
            List<Double> winds,
            Progress progress)
            throws InterruptedException {
        TargetGrid grid = new TargetGrid(winds, TargetRequest.defaultGrid().angles());
        return books.of(TargetRequest.of(file, wing, grid, section), progress);
    }
}
