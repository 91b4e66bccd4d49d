package trimwright.debrief;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.calibration.Correction;
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
 * @param calibrated what accepted calibrations take off boats' channels
 * @param learned book to hold speeds against instead, null for none; what trim costs stays the model's
 */
public record DebriefOptions(
        @Nullable Boat boat,
        @Nullable TargetBook book,
        @Nullable Course course,
        WindOptions wind,
        @Nullable Sections sections,
        List<Correction> calibrated,
        @Nullable TargetBook learned) {
    public DebriefOptions {
        calibrated = List.copyOf(calibrated);
    }

    /** Neither boat file nor targets nor course. */
    public static final DebriefOptions WITHOUT_BOAT = new DebriefOptions(null, null, null, WindOptions.DEFAULT);

    /** With sections in closed form. */
    public DebriefOptions(@Nullable Boat boat, @Nullable TargetBook book, @Nullable Course course, WindOptions wind) {
        this(boat, book, course, wind, null, List.of(), null);
    }

    /** The same with accepted calibrations. */
    public DebriefOptions with(List<Correction> accepted) {
        return new DebriefOptions(boat, book, course, wind, sections, accepted, learned);
    }

    /** What is taken off that boat's channels, or null. */
    @Nullable
    Correction findCorrection(String name) {
        return calibrated.stream()
                .filter(one -> one.boat().equalsIgnoreCase(name))
                .findFirst()
                .orElse(null);
    }

    /** Held against the book itself. */
    public DebriefOptions(
            @Nullable Boat boat,
            @Nullable TargetBook book,
            @Nullable Course course,
            WindOptions wind,
            @Nullable Sections sections) {
        this(boat, book, course, wind, sections, List.of(), null);
    }
}
