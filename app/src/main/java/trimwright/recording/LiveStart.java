package trimwright.recording;

import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Antenna;
import trimwright.call.StartWord;
import trimwright.call.TalkCard;
import trimwright.course.Course;
import trimwright.course.CourseGeometry;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.live.LiveFigures;
import trimwright.live.LivePlace;
import trimwright.start.LineBook;
import trimwright.start.LineSight;

/** Time and distance to the line and the seconds to spare before a start, for the trimmer's boat, as the pages get them. */
public final class LiveStart {
    /** From how long before the gun to how long after it a start is shown (s): chosen. */
    private static final double BEFORE = 300;

    private static final double AFTER = 5;

    /** Seconds to spare from which it is time to go: what it takes to say so and to act (s), chosen. */
    private static final double TO_ACT = 1.5;

    private final CourseGeometry geometry;
    private final long gunNanos;
    private final Antenna antenna;
    private final Supplier<@Nullable LineBook> book;
    private final TalkCard card;
    private final LiveCalls.Allowed allowed;

    /**
     * @param antenna where the place is measured
     * @param book seconds to the line; null as long as they are not known
     * @param allowed whether the event lets the crew be told what to do; figures are shown in any case
     */
    public LiveStart(
            Course course,
            long gunNanos,
            Antenna antenna,
            Supplier<@Nullable LineBook> book,
            TalkCard card,
            LiveCalls.Allowed allowed) {
        geometry = new CourseGeometry(course);
        this.gunNanos = gunNanos;
        this.antenna = antenna;
        this.book = book;
        this.card = card;
        this.allowed = allowed;
    }

    void put(LiveFigures figures, LivePlace place, Map<String, Object> into) {
        double toGun = (gunNanos - figures.timeNanos()) / 1e9;
        if (toGun > BEFORE || toGun < -AFTER) {
            return;
        }
        LineSight sight = LineSight.of(
                geometry.start(),
                new LineSight.Boat(
                        bow(place),
                        place.course(),
                        figures.motion().speed(),
                        figures.wind().tws(),
                        figures.wind().twd()),
                book.get(),
                toGun);
        number(into, "start.to_gun_s", Math.rint(toGun));
        number(into, "start.to_line_m", Math.rint(sight.toLine()));
        number(into, "start.way_m", Math.rint(sight.way()));
        number(into, "start.reach_s", Math.rint(sight.reach().middle()));
        number(into, "start.spare_s", Math.rint(sight.spare()));
        number(into, "start.spare_least_s", Math.rint(sight.spareLeast()));
        into.put("start.text", text(sight));
    }

    private String text(LineSight sight) {
        if (allowed == LiveCalls.Allowed.NO || Double.isNaN(sight.spare()) || sight.toGun() < 0) {
            return "";
        }
        return card.say(sight.spare() <= TO_ACT ? StartWord.GO : StartWord.HOLD);
    }

    private PlanePoint bow(LivePlace place) {
        PlanePoint at = geometry.plane().toPlane(new Position(place.latitude(), place.longitude()));
        double cos = StrictMath.cos(place.heading());
        double sin = StrictMath.sin(place.heading());
        double ahead = antenna.aftOfBow();
        double port = antenna.starboard();
        return at.plus(ahead * cos + port * sin, ahead * sin - port * cos);
    }

    private static void number(Map<String, Object> into, String name, double value) {
        into.put(name, Double.isFinite(value) ? (Object) value : Absent.VALUE);
    }
}
