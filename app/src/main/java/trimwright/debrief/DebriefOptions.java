package trimwright.debrief;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.course.Course;
import trimwright.prepare.Sections;
import trimwright.target.TargetBook;
import trimwright.wind.WindOptions;

/**
 * What a debrief is made with.
 *
 * @param boat the boats' description, or null: then wind stays at the sensor's height
 * @param book targets to judge by, or null: then each boat is judged by its own best
 * @param course that was sailed, or null: then legs are spans of one point of sail
 * @param wind how wind is found
 * @param sections of the wing that the book is of, null for those in closed form
 */
public record DebriefOptions(
        @Nullable Boat boat,
        @Nullable TargetBook book,
        @Nullable Course course,
        WindOptions wind,
        @Nullable Sections sections) {
    /** Neither boat file nor targets nor course. */
    public static final DebriefOptions WITHOUT_BOAT = new DebriefOptions(null, null, null, WindOptions.DEFAULT);

    /** With sections in closed form. */
    public DebriefOptions(@Nullable Boat boat, @Nullable TargetBook book, @Nullable Course course, WindOptions wind) {
        this(boat, book, course, wind, null);
    }
}
