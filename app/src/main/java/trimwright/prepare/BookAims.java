package trimwright.prepare;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trimwright.aim.Aim;
import trimwright.aim.AimFinder;
import trimwright.aim.Gustiness;
import trimwright.platform.Platform;
import trimwright.target.TargetBook;
import trimwright.target.TargetPoint;
import trimwright.text.Progress;
import trimwright.text.Texts;

/** How the targets of a book are sailed so that the day's gusts seldom pass a limit, and what that costs. */
public final class BookAims {
    private final Gustiness day;
    private final IdentityHashMap<TargetPoint, Aim> aims = new IdentityHashMap<>();

    private BookAims(Gustiness day) {
        this.day = day;
    }

    /**
     * Aims at the better branch of each node.
     *
     * @param sections that the book was computed with
     * @param turbulence standard deviation of the wind over its mean (-)
     * @param progress told of each wind
     */
    public static BookAims of(
            TargetRequest request, Sections sections, TargetBook book, double turbulence, Progress progress)
            throws InterruptedException {
        Platform platform = TargetRun.platformOf(request.boat().boat(), request.wing(), sections);
        BookAims aims =
                new BookAims(Gustiness.of(turbulence, request.boat().boat().limits()));
        AimFinder finder = new AimFinder(platform, request.held(), request.foils(), aims.day);
        List<List<TargetPoint>> winds = new ArrayList<>(book.listBest().stream()
                .filter(TargetPoint::isSolved)
                .collect(Collectors.groupingBy(TargetPoint::trueWindSpeed, LinkedHashMap::new, Collectors.toList()))
                .values());
        // A lone wind's points are shared out, so that its answer does not wait for one thread.
        List<List<TargetPoint>> tasks = winds.size() > 1
                ? winds
                : winds.stream().flatMap(List::stream).map(List::of).toList();
        List<List<Aim>> found = InParallel.map("aims", tasks, points -> {
            List<Aim> own =
                    points.stream().map(finder::aimAt).filter(Objects::nonNull).toList();
            progress.done(winds.size() > 1 ? 1 : 0);
            return own;
        });
        found.forEach(own -> own.forEach(aim -> aims.aims.put(aim.point(), aim)));
        return aims;
    }

    /** The same aims at the points of a book that has only other speeds than the one they were made for. */
    public BookAims at(TargetBook made, TargetBook other) {
        BookAims moved = new BookAims(day);
        for (int i = 0; i < made.points().size(); i++) {
            Aim aim = aims.get(made.points().get(i));
            if (aim != null) {
                moved.aims.put(other.points().get(i), aim);
            }
        }
        return moved;
    }

    /** Steps that {@link Progress} is told about. */
    public static long steps(TargetRequest request) {
        int winds = request.grid().winds().size();
        return winds > 1 ? winds : 0;
    }

    /** The aim at a point of that very book; null where no state leaves room for the gusts. */
    public @Nullable Aim find(TargetPoint point) {
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
