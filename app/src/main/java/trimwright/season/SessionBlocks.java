package trimwright.season;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.course.Course;
import trimwright.debrief.BoatDebrief;
import trimwright.debrief.Debrief;
import trimwright.debrief.DebriefOptions;
import trimwright.learned.SteadyBlock;
import trimwright.learned.SteadyBlocks;
import trimwright.response.SpeedResponse;
import trimwright.target.TargetBook;
import trimwright.track.BoatTrack;
import trimwright.wind.WindOptions;

/**
 * Steady foiling of the boats of one session, found as a debrief finds it.
 *
 * @param boat as described
 * @param book the model's targets of her and her wing
 * @param response how fast her speed follows the wind
 */
public record SessionBlocks(Boat boat, TargetBook book, SpeedResponse response) {
    /**
     * Blocks of those boats.
     *
     * @param number of the session within the season
     * @param tracks all boats of the session: wind sensors are made to agree over all of them
     * @param wanted which of them teach
     */
    public List<SteadyBlock> of(int number, List<BoatTrack> tracks, @Nullable Course course, Predicate<String> wanted) {
        // Without targets nothing is judged: wind and pieces are all that is needed.
        DebriefOptions options = new DebriefOptions(boat, null, course, WindOptions.DEFAULT);
        List<SteadyBlock> blocks = new ArrayList<>();
        for (BoatDebrief one : Debrief.of(tracks, options).boats()) {
            if (wanted.test(one.boat())) {
                blocks.addAll(SteadyBlocks.of(number, one.wind(), one.pieces(), book, response));
            }
        }
        return blocks;
    }
}
