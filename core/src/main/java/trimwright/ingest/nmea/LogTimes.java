package trimwright.ingest.nmea;

import java.util.Arrays;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.Clock;
import trimwright.ingest.ClockMarks;
import trimwright.ingest.IngestNote;
import trimwright.ingest.Issues;
import trimwright.ingest.Timeline;

/**
 * The time of each reading of a log. Where the logger stamped its lines, by the stamps alone; else by the sentences that
 * carry a time, those with a valid position before those without.
 */
final class LogTimes {
    /** ns that one byte takes on the standard's line: 4800 baud, ten bits a byte (NMEA 0183, from memory). */
    private static final double BYTE = 1e9 / 480;

    /** Chosen: more than the delay of a satellite receiver. */
    private static final long NOTABLE = 2_000_000_000L;

    private final Clock clock;
    private final boolean ownTimes;

    private LogTimes(Clock clock, boolean ownTimes) {
        this.clock = clock;
        this.ownTimes = ownTimes;
    }

    /** Null where there is no date. */
    static @Nullable LogTimes of(NmeaReader log, Set<IngestNote> notes) {
        if (log.isStamped()) {
            Clock clock = Clock.of(log.stamps(), log.start(), BYTE, log.issues(), notes);
            notes.add(IngestNote.TIME_FROM_STAMPS);
            if (log.sawUnzonedStamp()) {
                notes.add(IngestNote.STAMPS_WITHOUT_ZONE);
            }
            if (clock != null && isAway(log.valid(), clock)) {
                notes.add(IngestNote.STAMPS_DIFFER_FROM_SATELLITES);
            }
            return clock == null ? null : new LogTimes(clock, false);
        }
        if (log.valid().size() == 0
                && log.voided().size() == 0
                && log.arrivals().size() > 0) {
            Clock clock = Clock.of(log.arrivals(), null, BYTE, log.issues(), notes);
            notes.add(IngestNote.TIME_FROM_ARRIVAL);
            return clock == null ? null : new LogTimes(clock, false);
        }
        boolean onlyVoid = log.valid().size() == 0 && log.voided().size() > 0;
        ClockMarks marks = onlyVoid ? log.voided() : log.valid();
        Clock clock = Clock.of(marks, log.start(), BYTE, log.issues(), notes);
        if (marks.size() > 0) {
            notes.add(IngestNote.TIME_FROM_SENTENCES);
        }
        if (onlyVoid) {
            notes.add(IngestNote.TIME_FROM_VOID_SENTENCES);
        }
        return clock == null ? null : new LogTimes(clock, true);
    }

    /** Whether the satellite times lie apart from the stamps, in the median. */
    private static boolean isAway(ClockMarks satellite, Clock stamped) {
        long[] apart = Arrays.stream(apart(satellite, stamped)).map(Math::abs).toArray();
        Arrays.sort(apart);
        return apart.length > 0 && apart[apart.length / 2] > NOTABLE;
    }

    /** Satellite time less time of arrival (ns), the median; null where one of them is not known. */
    static @Nullable Long findClockError(ClockMarks satellite, ClockMarks arrivals) {
        Clock arrived = arrivals.size() == 0
                ? null
                : Clock.of(arrivals, null, BYTE, new Issues(), java.util.EnumSet.noneOf(IngestNote.class));
        if (arrived == null) {
            return null;
        }
        long[] apart = apart(satellite, arrived);
        Arrays.sort(apart);
        return apart.length == 0 ? null : apart[apart.length / 2];
    }

    /** Satellite times less those of another clock at the same places. */
    private static long[] apart(ClockMarks satellite, Clock other) {
        Clock clock = Clock.of(satellite, null, BYTE, new Issues(), java.util.EnumSet.noneOf(IngestNote.class));
        if (clock == null) {
            return new long[0];
        }
        long[] apart = new long[satellite.size()];
        int n = 0;
        for (int i = 0; i < satellite.size(); i++) {
            long time = other.at(satellite.position(i));
            if (time != Timeline.NONE) {
                apart[n++] = clock.statedBy(i) - time;
            }
        }
        return Arrays.copyOf(apart, n);
    }

    /** ns since 1970 UTC of row i, or {@link Timeline#NONE}. */
    long of(SourceRows rows, int i) {
        return ownTimes && rows.hasMark(i) ? clock.ofMark(rows.mark(i), rows.position(i)) : clock.at(rows.position(i));
    }

    /** Whether rows of that kind bring their own time. */
    boolean areOwn(NmeaLayout layout) {
        return ownTimes && layout.hasOwnTime();
    }

    boolean isFarOutside(SourceRows rows, int i) {
        return !(ownTimes && rows.hasMark(i)) && clock.isFarOutside(rows.position(i));
    }

    int stretch(SourceRows rows, int i) {
        return clock.stretchAt(rows.position(i));
    }
}
