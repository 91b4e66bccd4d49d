package trimwright.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import trimwright.air.ApparentWind;
import trimwright.boat.Boat;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.units.Angles;

/**
 * A boat's recorded channels with a calibration taken off: a new track, the old one stays as it is. Leeway and veer are
 * told, not applied: no channel reads them.
 */
public final class Corrected {
    private final BoatTrack track;
    private final Correction correction;
    private final boolean turnsWithWing;

    private Corrected(BoatTrack track, Correction correction, boolean turnsWithWing) {
        this.track = track;
        this.correction = correction;
        this.turnsWithWing = turnsWithWing;
    }

    /** @param boat where the sensor stands, null where that is not known */
    public static BoatTrack of(BoatTrack track, Correction correction, @Nullable Boat boat) {
        return new Corrected(
                        track, correction, boat != null && boat.windSensor().turnsWithWing())
                .track();
    }

    private BoatTrack track() {
        List<ChannelGroup> groups = new ArrayList<>();
        for (ChannelGroup group : track.groups()) {
            List<Channel> channels = group.channels().stream()
                    .map(channel -> corrected(group, channel))
                    .toList();
            groups.add(new ChannelGroup(group.name(), group.timesToArray(), channels));
        }
        return new BoatTrack(track.boat(), groups);
    }

    private Channel corrected(ChannelGroup group, Channel channel) {
        return switch (channel.path()) {
            case Paths.AWA -> changed(channel, i -> angle(group, channel, i));
            case Paths.AWS -> changed(channel, i -> channel.get(i) / (1 + get(Unknown.WIND_SPEED)));
            case Paths.STW -> changed(channel, i -> channel.get(i) / (1 + get(Unknown.BOAT_SPEED)));
            case Paths.HEADING, Paths.HEADING_MAGNETIC ->
                changed(channel, i -> compass(channel.get(i) - get(Unknown.COMPASS)));
            case Paths.CAMBER -> changed(channel, i -> channel.get(i) - get(Unknown.CAMBER));
            case Paths.SHEET -> changed(channel, i -> channel.get(i) - get(Unknown.SHEET));
            case Paths.TWIST -> changed(channel, i -> channel.get(i) - get(Unknown.TWIST));
            default -> channel;
        };
    }

    private double get(Unknown unknown) {
        return correction.get(unknown);
    }

    private static double compass(double angle) {
        return Double.isNaN(angle) ? angle : Angles.compass(angle);
    }

    private static Channel changed(Channel channel, IntToDoubleFunction value) {
        double[] values = new double[channel.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = value.applyAsDouble(i);
        }
        return new Channel(channel.path(), values, channel.qualityToArray());
    }

    private double angle(ChannelGroup group, Channel channel, int i) {
        double read = channel.get(i) - get(Unknown.WIND_ANGLE);
        if (Double.isNaN(read) || !correction.has(Unknown.UPWASH)) {
            return Double.isNaN(read) ? read : Angles.signed(read);
        }
        long time = group.timeNanos(i);
        double sheet = at(Paths.SHEET, time) - get(Unknown.SHEET);
        UpwashBasis.Set set = new UpwashBasis.Set(
                at(Paths.CAMBER, time) - get(Unknown.CAMBER), sheet, at(Paths.TWIST, time) - get(Unknown.TWIST));
        double fromBow = Angles.signed(turnsWithWing ? read + sheet : read);
        double share =
                correction.upwash().share(new ApparentWind(at(Paths.AWS, time), fromBow), set, get(Unknown.UPWASH));
        return Angles.signed(Double.isNaN(share) ? read : read - get(Unknown.UPWASH) * share);
    }

    /** The last good sample of a channel at or before a time, NaN without one. */
    private double at(String path, long time) {
        ChannelGroup group = track.findGroupOf(path);
        Channel channel = group == null ? null : group.find(path);
        if (group == null || channel == null) {
            return Double.NaN;
        }
        int i = group.indexAtOrBefore(time);
        while (i >= 0 && !channel.isGood(i)) {
            i--;
        }
        return i < 0 ? Double.NaN : channel.get(i);
    }
}
