package trimwright.dock;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.track.BoatTrack;

/**
 * Holds what a boat's instruments said at the dock against what is known: {@link DockStep} has the crew's list. Zeros are means over what
 * was held, with intervals that allow for samples that hang together; what the sizes of the verdicts are is chosen, and told in
 * docs/theory/analysis.md. It finds what shows at rest: no lag of the wind sensor, no upwash, no factor on the wind speed.
 */
public final class DockCheck {
    private DockCheck() {}

    /**
     * Checks a boat.
     *
     * @param track what was recorded of her
     * @param startNanos when the list was begun (ns since 1970 UTC)
     * @param wing that she carries
     * @param given what people measured themselves
     */
    public static DockAnswer of(BoatTrack track, long startNanos, Boat boat, WingSpec wing, DockGiven given) {
        Samples samples = new Samples(track, startNanos);
        double seconds = (track.endNanos() - startNanos) / 1e9;
        DockAnswer refusal = Rest.refusal(samples, seconds);
        if (refusal != null) {
            return refusal;
        }
        Map<DockItem, DockLine> lines = new EnumMap<>(DockItem.class);
        Flaps flaps = Flaps.of(samples, boat, wing, seconds);
        flaps.addTo(lines);
        Zeros zeros = new Zeros(samples, given, flaps);
        zeros.addTo(lines);
        new Loads(samples, wing, given).addTo(lines);
        new WindVane(samples, boat, flaps).addTo(lines);
        new Places(samples, boat, given).addTo(lines);
        List<DockLine> all = new ArrayList<>();
        for (DockItem item : DockItem.values()) {
            @Nullable DockLine line = lines.get(item);
            if (line == null) {
                throw new IllegalStateException("nobody tells " + item);
            }
            all.add(seconds < item.step().heldTo() ? DockLine.of(item, DockFinding.NOT_YET) : line);
        }
        DockAnswer.Checked checked = new DockAnswer.Checked(startNanos, seconds, all, List.of());
        return new DockAnswer.Checked(startNanos, seconds, all, Prior.of(checked));
    }
}
