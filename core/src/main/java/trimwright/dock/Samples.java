package trimwright.dock;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Quality;

/** The channels of a check by seconds from its begin. Samples marked frozen are kept: that they are is what shall be found. */
final class Samples {
    private final BoatTrack track;
    private final long startNanos;
    private final Map<String, Window> whole = new HashMap<>();

    Samples(BoatTrack track, long startNanos) {
        this.track = track;
        this.startNanos = startNanos;
    }

    /** What was heard while the step was held. */
    Window held(String path, DockStep step) {
        return of(path).between(step.heldFrom(), step.heldTo());
    }

    /** What was heard from the begin of the list to its end; empty where the channel is not logged. */
    Window of(String path) {
        return whole.computeIfAbsent(path, this::read);
    }

    boolean isLogged(String path) {
        return track.find(path) != null;
    }

    private Window read(String path) {
        @Nullable ChannelGroup group = track.findGroupOf(path);
        @Nullable Channel channel = track.find(path);
        if (group == null || channel == null) {
            return Window.EMPTY;
        }
        double[] times = new double[channel.size()];
        double[] values = new double[channel.size()];
        int n = 0;
        for (int i = 0; i < channel.size(); i++) {
            double at = (group.timeNanos(i) - startNanos) / 1e9;
            Quality quality = channel.quality(i);
            boolean counts = quality == Quality.GOOD || quality == Quality.FROZEN || quality == Quality.TIME_REPAIRED;
            if (counts && at >= 0 && at <= DockStep.PULL.end()) {
                times[n] = at;
                values[n++] = channel.get(i);
            }
        }
        return new Window(Arrays.copyOf(times, n), Arrays.copyOf(values, n));
    }
}
