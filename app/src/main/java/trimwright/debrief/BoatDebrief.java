package trimwright.debrief;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.calibration.Correction;
import trimwright.compare.Comparison;
import trimwright.segment.FoilingRule;
import trimwright.segment.OnCourse;
import trimwright.segment.Pieces;
import trimwright.segment.Turn;
import trimwright.segment.TurnLabel;
import trimwright.track.ChannelSummary;
import trimwright.wind.WindTrack;

/**
 * One boat's day.
 *
 * @param wind the track on the session's clock with its wind
 * @param on the boat on its course, or null without one
 * @param startShare speed at the gun over that of the target in that wind at that angle (-), null where one of them is
 *     not known
 * @param foiling how spells off the foils were told
 * @param pieces what the day was cut into
 * @param comparison against the reference
 * @param aims how targets of its legs were to be sailed in their gusts; none without targets
 * @param quality one for each recorded channel, by name
 * @param calibration that was accepted and taken off, or null
 */
public record BoatDebrief(
        WindTrack wind,
        @Nullable OnCourse on,
        @Nullable Double startShare,
        FoilingRule foiling,
        Pieces pieces,
        Comparison comparison,
        List<LegAim> aims,
        List<ChannelSummary> quality,
        @Nullable Correction calibration) {
    public BoatDebrief {
        aims = List.copyOf(aims);
        quality = List.copyOf(quality);
    }

    public String boat() {
        return wind.boat();
    }

    /** What a turn cost against sailing on as before, or null: at a mark nobody sails on as before. */
    static Turn.@Nullable Recovery recovery(Turn turn) {
        return turn.label() == TurnLabel.MARK ? null : turn.recovery();
    }
}
