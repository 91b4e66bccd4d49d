package trimwright.prepare;

import java.util.IdentityHashMap;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.aim.AimFinder;
import trimwright.aim.AimLevels;
import trimwright.aim.Gustiness;
import trimwright.platform.Platform;
import trimwright.target.TargetBook;
import trimwright.target.TargetPoint;
import trimwright.text.Texts;

/** What the day's gusts leave to be carried at the targets of a book, and what that costs. */
public final class BookAims {
    /**
     * At one target.
     *
     * @param levels moment and load
     * @param priceAtLeast speed that the margin of moment costs at least (m/s); NaN where no multiplier tells it
     */
    public record PointAim(AimLevels levels, double priceAtLeast) {}

    private final Gustiness day;
    private final IdentityHashMap<TargetPoint, PointAim> aims = new IdentityHashMap<>();

    private BookAims(Gustiness day) {
        this.day = day;
    }

    /**
     * Aims at the better branch of each node.
     *
     * @param sections that the book was computed with
     * @param turbulence standard deviation of the wind over its mean (-)
     */
    public static BookAims of(TargetRequest request, Sections sections, TargetBook book, double turbulence)
            throws InterruptedException {
        Platform platform = TargetRun.platformOf(request.boat().boat(), request.wing(), sections);
        BookAims aims =
                new BookAims(Gustiness.of(turbulence, request.boat().boat().limits()));
        AimFinder finder = new AimFinder(platform, request.held(), request.foils(), aims.day);
        List<TargetPoint> solved =
                book.listBest().stream().filter(TargetPoint::isSolved).toList();
        List<List<PointAim>> found = InParallel.map("aims", solved, point -> {
            AimLevels levels = finder.levelsAt(point);
            return levels == null
                    ? List.<PointAim>of()
                    : List.of(new PointAim(levels, finder.priceAtLeast(point, levels)));
        });
        for (int i = 0; i < solved.size(); i++) {
            if (!found.get(i).isEmpty()) {
                aims.aims.put(solved.get(i), found.get(i).get(0));
            }
        }
        return aims;
    }

    /** The aim at a point of that very book; null where a gust's flow has no answer. */
    public @Nullable PointAim find(TargetPoint point) {
        return aims.get(point);
    }

    /** How gusty the day is taken to be. */
    public Gustiness day() {
        return day;
    }

    /** Why aims lie below limits, a sentence for people. */
    public String reason() {
        return Texts.of("targets.aim_reason", 100 * day.turbulence(), 100 * day.chancePerMinute());
    }
}
