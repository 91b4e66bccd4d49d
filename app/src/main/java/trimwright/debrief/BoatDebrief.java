package trimwright.debrief;

import java.util.List;
import trimwright.compare.Comparison;
import trimwright.segment.FoilingRule;
import trimwright.segment.Pieces;
import trimwright.track.ChannelSummary;
import trimwright.wind.WindTrack;

/**
 * One boat's day.
 *
 * @param wind the track on the session's clock with its wind
 * @param foiling how spells off the foils were told
 * @param pieces what the day was cut into
 * @param comparison against the reference
 * @param quality one for each recorded channel, by name
 */
public record BoatDebrief(
        WindTrack wind, FoilingRule foiling, Pieces pieces, Comparison comparison, List<ChannelSummary> quality) {
    public BoatDebrief {
        quality = List.copyOf(quality);
    }

    public String boat() {
        return wind.boat();
    }
}
