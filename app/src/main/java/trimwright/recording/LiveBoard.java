package trimwright.recording;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import trimwright.call.Call;
import trimwright.ingest.journal.JournalSource;
import trimwright.live.LiveBoat;
import trimwright.live.LiveFigures;
import trimwright.live.StreamDecoder;

/**
 * What the live pages show: one flat table of named values, renewed as bytes come, at most twenty times a second. Called
 * on one thread; {@link #state} may be asked on any.
 */
public final class LiveBoard implements Follower {
    /** Chosen: a fleet and its coach boats; more names than that are noise. */
    private static final int MOST_BOATS = 40;

    private final Supplier<LiveBoat> newBoat;
    private final String own;
    private final EventMode mode;
    private final Map<String, Object> fixed = new LinkedHashMap<>();
    private final Map<JournalSource, StreamDecoder> decoders = new HashMap<>();
    private final Map<String, LiveBoat> boats = new LinkedHashMap<>();
    private final @Nullable LiveCalls calls;
    private final @Nullable LiveStart start;
    private volatile @Nullable Recorder recorder;
    private volatile Map<String, Object> state = Map.of();
    private volatile long nowNanos;

    /**
     * @param newBoat makes the derivation of one more boat
     * @param own the trimmer's boat; empty for the first that is heard
     * @param rate of a replay, 0 for a recording
     */
    public LiveBoard(Supplier<LiveBoat> newBoat, String own, EventMode mode, double rate) {
        this(newBoat, own, mode, rate, null, null);
    }

    /**
     * As above, with calls to the trimmer and what is to be known before a start.
     *
     * @param calls null for none
     * @param start null where there is no course
     */
    public LiveBoard(
            Supplier<LiveBoat> newBoat,
            String own,
            EventMode mode,
            double rate,
            @Nullable LiveCalls calls,
            @Nullable LiveStart start) {
        this.start = start;
        this.calls = calls;
        this.newBoat = newBoat;
        this.own = own;
        this.mode = mode;
        fixed.put("event", mode.key());
        fixed.put("replay_rate_ratio", rate);
    }

    /** Shows what the last dock check of the trimmer's boat said must be put right first; called before anything is taken. */
    public void warn(List<String> dockStops) {
        fixed.put("dock_stops", List.copyOf(dockStops));
    }

    /** Tells how the recording stands from now on. */
    public void watch(Recorder watched) {
        recorder = watched;
    }

    @Override
    public void take(JournalSource source, long arrivalNanos, byte[] bytes) {
        decoders.computeIfAbsent(source, s -> new StreamDecoder(s, this::put)).accept(bytes, arrivalNanos);
    }

    private void put(String boat, String device, String path, long nanos, double value) {
        LiveBoat known = boats.get(boat);
        if (known == null && boats.size() < MOST_BOATS) {
            known = newBoat.get();
            boats.put(boat, known);
        }
        if (known != null) {
            known.put(device, path, nanos, value);
            known.advance(nanos);
        }
    }

    @Override
    public void tick(long now) {
        nowNanos = now;
        Map<String, Object> fresh = new LinkedHashMap<>(fixed);
        String shown = shown();
        List<String> names = new ArrayList<>();
        for (Map.Entry<String, LiveBoat> boat : boats.entrySet()) {
            boat.getValue().advance(now);
            if (mode.showsOthers() || boat.getKey().equals(shown)) {
                names.add(boat.getKey());
                LiveFigures figures = boat.getValue().figures();
                BoatKeys.put(boat.getKey(), figures, fresh);
                if (calls != null && boat.getKey().equals(shown)) {
                    calls.putMarks(boat.getKey(), figures, fresh);
                    call(calls, figures, nearest(boat.getValue()), fresh);
                }
                if (start != null && boat.getKey().equals(shown)) {
                    start.put(figures, boat.getValue().place(), fresh);
                }
            }
        }
        fresh.put("own", shown);
        fresh.put("boats", names);
        Recorder watched = recorder;
        if (watched != null) {
            recording(watched.state(), fresh);
        }
        state = Collections.unmodifiableMap(fresh);
    }

    /** Distance from a boat to the nearest other one (m); NaN where none may be shown or none is near enough to be known. */
    private double nearest(LiveBoat from) {
        double nearest = Double.NaN;
        if (mode.showsOthers()) {
            for (LiveBoat boat : boats.values()) {
                double apart = boat == from ? Double.NaN : from.distanceTo(boat);
                nearest = nearest <= apart || Double.isNaN(apart) ? nearest : apart;
            }
        }
        return nearest;
    }

    private void call(LiveCalls caller, LiveFigures figures, double nearest, Map<String, Object> fresh) {
        Call call = caller.step(figures, nearest);
        Recorder watched = recorder;
        if (call != null && watched != null) {
            watched.keepCall(call.timeNanos(), Notes.call(call, caller.said()));
        }
        caller.put(fresh);
    }

    /** Her name as it is written in the data, where it was heard; upper and lower case do not matter. */
    private String shown() {
        for (String boat : boats.keySet()) {
            if (own.isEmpty() || boat.equalsIgnoreCase(own)) {
                return boat;
            }
        }
        return own;
    }

    private static void recording(RecorderState how, Map<String, Object> fresh) {
        // In whole tenths of a megabyte, so that it is no news twenty times a second.
        fresh.put("recorded_mb", Math.floor(how.bytes() / 1e5) / 10);
        fresh.put("lost_bytes", how.lost());
        fresh.put("disk_fault", how.fault() == null ? "" : how.fault());
        List<String> inputs = new ArrayList<>();
        for (RecorderState.InputInfo input : how.inputs()) {
            inputs.add(input.address().boat() + " " + input.address().text() + " "
                    + input.state().name().toLowerCase(Locale.ROOT)
                    + (input.reason().isEmpty() ? "" : " " + input.reason()));
        }
        fresh.put("inputs", inputs);
    }

    /** Every value by its name, as of the last tick; a new table each time. */
    public Map<String, Object> state() {
        return state;
    }

    /** Time of the data, ISO 8601. */
    public String timeUtc() {
        return Instant.ofEpochMilli(nowNanos / 1_000_000).toString();
    }

    /** Keeps a mark of the last so many seconds; false in a replay, where nothing is kept. */
    public boolean mark(double seconds) throws InterruptedException {
        Recorder watched = recorder;
        if (watched == null) {
            return false;
        }
        watched.mark(seconds, "");
        return true;
    }
}
