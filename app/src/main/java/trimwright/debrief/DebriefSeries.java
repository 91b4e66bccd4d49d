package trimwright.debrief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.target.TargetBook;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.wind.Quantity;
import trimwright.wind.SessionClock;
import trimwright.wind.WindTrack;

/**
 * What the debrief found, sample by sample on the session's clock, for charts: channels {@code debrief.tws},
 * {@code debrief.twa} and so on, each named by its {@link Quantity} in lower case. SI, radians, signed in body axes, NaN
 * in gaps.
 */
public final class DebriefSeries {
    public static final String PREFIX = "debrief.";

    private DebriefSeries() {}

    /** The channel's name of a quantity. */
    public static String nameOf(Quantity quantity) {
        return PREFIX + quantity.name().toLowerCase(Locale.ROOT);
    }

    /** Names of all quantities that the boat's track has, in the order of the enumeration. */
    public static List<String> names(WindTrack track) {
        return Arrays.stream(Quantity.values())
                .filter(track::has)
                .map(DebriefSeries::nameOf)
                .toList();
    }

    /**
     * All of them as one group of channels.
     *
     * @param book the targets that the boat was held against, or null: then there is no target speed
     */
    public static ChannelGroup of(BoatDebrief boat, @Nullable TargetBook book) {
        WindTrack track = boat.wind();
        List<Channel> channels = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            if (track.has(quantity)) {
                channels.add(Channel.of(nameOf(quantity), track.toArray(quantity)));
            }
        }
        if (book != null) {
            channels.add(TargetSpeeds.of(boat, book));
        }
        return new ChannelGroup("debrief", times(track.clock()), channels);
    }

    /** Times of the clock (ns since 1970). */
    public static long[] times(SessionClock clock) {
        long[] times = new long[clock.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = clock.timeNanos(i);
        }
        return times;
    }
}
