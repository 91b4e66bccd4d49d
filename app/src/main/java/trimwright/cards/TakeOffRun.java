package trimwright.cards;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.card.TakeOffCard;
import trimwright.card.TakeOffRow;
import trimwright.platform.Platform;
import trimwright.prepare.InParallel;
import trimwright.prepare.TargetRun;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.units.Units;

/** Computes take-off cards, one wind a task. */
public final class TakeOffRun {
    /** Steps of a dying wind (m/s): a quarter of a knot, finer than anybody tells winds apart; chosen. */
    private static final double STEP = Units.fromKnots(0.25);

    private TakeOffRun() {}

    /**
     * What a card says.
     *
     * @param rows one a wind
     * @param last in which nothing holds the boat up below it, from the lowest foiling wind of the rows; null where none foils
     */
    public record TakeOffs(List<TakeOffRow> rows, TakeOffCard.@Nullable LastUp last) {
        public TakeOffs {
            rows = List.copyOf(rows);
        }
    }

    /** Steps that {@link Progress} is told about: one a wind. */
    public static long steps(TakeOffRequest request) {
        return request.winds().size();
    }

    /** Take-off in each wind asked, from a book that has exactly these. */
    public static TakeOffs of(TakeOffRequest request, TargetBook book, Progress progress) throws InterruptedException {
        Platform platform = TargetRun.platformOf(request.file().boat(), request.wing());
        List<TakeOffRow> rows = InParallel.map("take-off", request.winds(), wind -> {
            TakeOffRow row = new TakeOffCard(platform).rowOf(book, wind);
            progress.done(1);
            return row;
        });
        return new TakeOffs(rows, new TakeOffCard(platform).lastUp(book, STEP));
    }
}
