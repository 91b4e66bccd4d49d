package trimwright.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.debrief.BoatDebrief;
import trimwright.debrief.DebriefReport;
import trimwright.debrief.DebriefSeries;
import trimwright.target.TargetBook;
import trimwright.track.BoatTrack;

/** A debrief as pages need it: its document, and the series of each boat for charts. */
final class MadeDebrief implements BackgroundWork.Result {
    private final byte[] document;
    private final @Nullable TargetBook book;
    private final Map<String, ChartTrack> series = new HashMap<>();

    MadeDebrief(byte[] document, DebriefReport report, @Nullable TargetBook book) {
        this.document = document;
        this.book = book;
        for (BoatDebrief boat : report.boats()) {
            BoatTrack track = new BoatTrack(boat.boat(), List.of(DebriefSeries.of(boat, book)));
            series.put(boat.boat(), new ChartTrack(track));
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

    @Nullable
    ChartTrack findSeries(String boat) {
        return series.get(boat);
    }
}
