package trimwright.dock;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import trimwright.boat.Boat;
import trimwright.boat.Whimbrel14;
import trimwright.boat.WingSpec;
import trimwright.sim.DockFaults;
import trimwright.sim.DockReading;
import trimwright.sim.DockStretch;
import trimwright.sim.SensorFaults;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;

/** Simulated stretches at the dock as tracks. */
final class DockTracks {
    static final Boat BOAT = Whimbrel14.boat();
    static final WingSpec WING = BOAT.getWing("tall");
    static final long START = 1_800_000_000_000_000_000L;

    private static final double EARTH = 6_371_007;

    private DockTracks() {}

    static DockFaults faults(DockFaults.Plain... plain) {
        return new DockFaults(SensorFaults.NONE, 0, 1, 1, List.of(plain));
    }

    static BoatTrack of(DockFaults faults, long seed) {
        return track(DockStretch.of(BOAT, WING, faults, seed, "Dunlin"));
    }

    static BoatTrack track(List<DockReading> readings) {
        Map<String, ToDoubleFunction<DockReading>> channels = new LinkedHashMap<>();
        channels.put(Paths.SOG, r -> r.reading().fix().speed());
        channels.put(Paths.LATITUDE, r -> 0.5 + r.reading().fix().north() / EARTH);
        channels.put(Paths.LONGITUDE, r -> 0.5 + r.reading().fix().east() / EARTH);
        channels.put(Paths.HEADING, r -> r.reading().attitude().heading());
        channels.put(Paths.ROLL, r -> r.reading().attitude().roll());
        channels.put(Paths.PITCH, r -> r.reading().attitude().pitch());
        channels.put(Paths.AWA, r -> r.reading().wind().angle());
        channels.put(Paths.AWS, r -> r.reading().wind().speed());
        channels.put(Paths.CAMBER, r -> r.reading().wing().camber());
        channels.put(Paths.TWIST, r -> r.reading().wing().twist());
        channels.put(Paths.FLAP_MIDDLE, DockReading::flapMiddle);
        channels.put(Paths.SHEET, r -> r.reading().wing().sheet());
        channels.put(Paths.SHEET_LOAD, r -> r.reading().wing().sheetLoad());
        long[] times = readings.stream()
                .mapToLong(r -> START + Math.round(r.reading().time() * 1e9))
                .toArray();
        List<Channel> all = new ArrayList<>();
        channels.forEach((path, value) ->
                all.add(Channel.of(path, readings.stream().mapToDouble(value).toArray())));
        return new BoatTrack("Dunlin", List.of(new ChannelGroup("all", times, all)));
    }

    static DockAnswer.Checked check(BoatTrack track) {
        DockGiven given = new DockGiven(
                Double.NaN,
                Double.NaN,
                DockStretch.PULL,
                BOAT.antenna().aftOfBow(),
                BOAT.antenna().starboard());
        DockAnswer answer = DockCheck.of(track, START, BOAT, WING, given);
        if (answer instanceof DockAnswer.Checked checked) {
            return checked;
        }
        throw new AssertionError(answer.toString());
    }
}
