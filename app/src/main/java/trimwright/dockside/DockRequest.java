package trimwright.dockside;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.dock.DockAnswer;
import trimwright.dock.DockCheck;
import trimwright.dock.DockGiven;
import trimwright.text.NoAnswerException;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;

/**
 * A dock check that is asked for.
 *
 * @param file boat file that the boat is held against
 * @param wing that she carries
 * @param track what was recorded of her
 * @param startNanos when the list was begun (ns since 1970 UTC)
 * @param given what people measured
 */
public record DockRequest(BoatFile file, WingSpec wing, BoatTrack track, long startNanos, DockGiven given) {
    /**
     * The boat of that name among the tracks, letters of either case; without a name the only one.
     *
     * @throws UserInputException where there is no such boat, or several and no name
     */
    public static BoatTrack choose(List<BoatTrack> tracks, @Nullable String own) {
        String names = String.join(", ", tracks.stream().map(BoatTrack::boat).toList());
        for (BoatTrack track : tracks) {
            if (own == null ? tracks.size() == 1 : track.boat().equalsIgnoreCase(own)) {
                return track;
            }
        }
        throw new UserInputException(
                own == null ? Texts.of("dock.which_boat", names) : Texts.of("dock.no_boat", own, names));
    }

    /** The check; throws {@link NoAnswerException} with one line where the boat was not at rest. */
    public DockAnswer.Checked check() {
        DockAnswer answer = DockCheck.of(track, startNanos, file.boat(), wing, given);
        if (answer instanceof DockAnswer.Refused refused) {
            throw new NoAnswerException(DockWords.refusal(track.boat(), startNanos, refused));
        }
        if (answer instanceof DockAnswer.Checked checked) {
            return checked;
        }
        throw new IllegalStateException("no such answer: " + answer);
    }
}
