package trimwright.segment;

import java.util.ArrayList;
import java.util.List;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/** Finds spells off the foils; touches shorter than 2 s are waves (chosen). */
final class OffFoilFinder {
    private static final double SHORTEST = 2.0;

    private OffFoilFinder() {}

    static List<OffFoil> find(WindTrack track, FoilingRule rule) {
        if (rule instanceof FoilingRule.ByRideHeight height) {
            return find(track, Quantity.RIDE_HEIGHT, height.down(), height.up());
        }
        if (rule instanceof FoilingRule.BySpeed speed) {
            return find(track, Quantity.SPEED, speed.down(), speed.up());
        }
        return List.of();
    }

    private static List<OffFoil> find(WindTrack track, Quantity quantity, double down, double up) {
        int shortest = track.clock().steps(SHORTEST);
        List<OffFoil> spells = new ArrayList<>();
        int from = -1;
        for (int i = 0; i <= track.size(); i++) {
            double value = i < track.size() ? track.get(quantity, i) : Double.NaN;
            boolean isDown = from >= 0 ? value < up : value <= down;
            if (isDown && from < 0) {
                from = i;
            } else if (!isDown && from >= 0) {
                if (i - from >= shortest) {
                    spells.add(new OffFoil(new Span(from, i)));
                }
                from = -1;
            }
        }
        return spells;
    }
}
