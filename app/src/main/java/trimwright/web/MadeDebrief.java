package trimwright.web;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import trimwright.debrief.BoatDebrief;
import trimwright.debrief.DebriefReport;
import trimwright.debrief.DebriefSeries;
import trimwright.debrief.StartOverlay;
import trimwright.debrief.TurnOverlay;
import trimwright.segment.TurnKind;
import trimwright.target.TargetBook;
import trimwright.track.BoatTrack;

/** A debrief as pages need it: its document, and the series of each boat for charts. */
final class MadeDebrief implements BackgroundWork.Result {
    private final byte[] document;
    private final @Nullable TargetBook book;
    private final Map<String, ChartTrack> series = new HashMap<>();
    private final Map<TurnKind, byte[]> turns = new EnumMap<>(TurnKind.class);
    private final byte[] starts;

    MadeDebrief(byte[] document, DebriefReport report, @Nullable TargetBook book) {
        this.document = document;
        this.book = book;
        for (BoatDebrief boat : report.boats()) {
            BoatTrack track = new BoatTrack(boat.boat(), List.of(DebriefSeries.of(boat, book)));
            series.put(boat.boat(), new ChartTrack(track));
        }
        starts = Json.bytes(StartOverlay.of(report));
        for (TurnKind kind : TurnKind.values()) {
            turns.put(kind, Json.bytes(TurnOverlay.of(report, kind)));
        }
    }

    @Override
    public byte[] document() {
        return document;
    }

    /** Of the targets that the boats were held against, null where there were none or their judgement was at hand. */
    @Nullable
    TargetBook book() {
        return book;
    }

    /** All turns of a kind laid over one another: {@code turns/1}. */
    byte[] turns(TurnKind kind) {
        return Objects.requireNonNull(turns.get(kind));
    }

    /** All starts laid over one another: {@code starts/1}. */
    byte[] starts() {
        return starts;
    }

    @Nullable
    ChartTrack findSeries(String boat) {
        return series.get(boat);
    }
}
