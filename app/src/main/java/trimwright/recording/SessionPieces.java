package trimwright.recording;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import trimwright.ingest.Days;
import trimwright.ingest.Issues;
import trimwright.ingest.TimeText;
import trimwright.ingest.journal.JournalScanner;
import trimwright.ingest.journal.JournalSource;
import trimwright.ingest.journal.JournalSource.Framing;
import trimwright.ingest.journal.JournalSource.Protocol;
import trimwright.ingest.journal.RecordKind;
import trimwright.ingest.nmea.ChecksumRule;
import trimwright.ingest.nmea.NmeaDecoder;
import trimwright.ingest.nmea.NmeaReading;
import trimwright.ingest.nmea.NmeaScanner;
import trimwright.store.SourceInfo;
import trimwright.store.StoredSession;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.units.Units;

/**
 * A session as the bytes that its streams would have brought, in order of time. A journal gives its records. A log of NMEA
 * 0183 gives its lines, each at the time of the last sentence before it that has date and time. Of every other kind of
 * file, deltas of Signal K are made from the channels that were read from it.
 */
final class SessionPieces {
    private final List<Piece> pieces = new ArrayList<>();

    private SessionPieces() {}

    static List<Piece> of(StoredSession session) {
        SessionPieces all = new SessionPieces();
        for (SourceInfo source : session.info().sources()) {
            switch (source.kind()) {
                case SourceInfo.COURSE -> {
                    // A course is no data.
                }
                case "journal" -> all.journal(session.raw(source));
                case "nmea0183" -> all.sentences(session, source);
                default -> session.tracksOf(source).forEach(track -> all.deltas(track, source.name()));
            }
        }
        all.pieces.sort(Comparator.comparingLong(Piece::nanos));
        return all.pieces;
    }

    private void journal(byte[] bytes) {
        Map<Integer, JournalSource> declared = new HashMap<>();
        JournalScanner scanner = new JournalScanner((kind, number, nanos, held, from, to) -> {
            JournalSource source =
                    kind == RecordKind.SOURCE ? JournalSource.find(held, from, to) : declared.get(number);
            if (source != null && kind == RecordKind.SOURCE) {
                declared.put(number, source);
            } else if (source != null && kind == RecordKind.DATA) {
                pieces.add(new Piece(nanos, source, Arrays.copyOfRange(held, from, to)));
            }
        });
        scanner.accept(bytes, 0, bytes.length);
    }

    private void sentences(StoredSession session, SourceInfo info) {
        List<BoatTrack> tracks = session.tracksOf(info);
        if (tracks.isEmpty()) {
            return;
        }
        byte[] bytes = session.raw(info);
        JournalSource source = new JournalSource(
                Protocol.NMEA0183, Framing.STREAM, tracks.get(0).boat(), info.name());
        long[] at = {tracks.get(0).startNanos()};
        Days days = new Days();
        Issues issues = new Issues();
        NmeaReading reading = new NmeaReading();
        NmeaDecoder decoder = new NmeaDecoder(issues);
        NmeaScanner scanner = new NmeaScanner(issues, ChecksumRule.OPTIONAL, (sentence, line, position, stamp) -> {
            if (stamp != TimeText.NONE) {
                at[0] = Math.max(at[0], stamp);
            } else if (decoder.decode(sentence, line, reading)
                    && reading.clockTrust() == NmeaReading.ClockTrust.VALID
                    && reading.year() >= 0) {
                int year = reading.year() + (reading.year() < 80 ? 2000 : reading.year() < 100 ? 1900 : 0);
                long day = days.of(year, reading.month(), reading.day());
                at[0] = day == Days.NONE ? at[0] : Math.max(at[0], day * Days.NANOS_PER_DAY + reading.timeOfDayNanos());
            }
        });
        int from = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n' || i == bytes.length - 1) {
                scanner.accept(bytes, from, i + 1);
                pieces.add(new Piece(at[0], source, Arrays.copyOfRange(bytes, from, i + 1)));
                from = i + 1;
            }
        }
    }

    private void deltas(BoatTrack track, String name) {
        JournalSource source = new JournalSource(Protocol.SIGNALK, Framing.STREAM, track.boat(), name);
        for (ChannelGroup group : track.groups()) {
            for (int i = 0; i < group.size(); i++) {
                String line = delta(group, i);
                if (!line.isEmpty()) {
                    pieces.add(new Piece(group.timeNanos(i), source, line.getBytes(StandardCharsets.US_ASCII)));
                }
            }
        }
    }

    private static String delta(ChannelGroup group, int i) {
        List<String> values = new ArrayList<>();
        for (Channel channel : group.channels()) {
            if (channel.isGood(i) && Paths.all().contains(channel.path())) {
                values.add(value(channel.path(), channel.get(i)));
            }
        }
        return values.isEmpty()
                ? ""
                : String.format(
                        Locale.ROOT,
                        "{\"updates\":[{\"timestamp\":\"%s\",\"values\":[%s]}]}\n",
                        Instant.ofEpochSecond(0, group.timeNanos(i)),
                        String.join(",", values));
    }

    /** A part of a position or attitude is a value of the whole, as the standard has it. */
    private static String value(String path, double value) {
        int dot = path.lastIndexOf('.');
        String whole = path.substring(0, dot);
        if (whole.equals("navigation.position") || whole.equals("navigation.attitude")) {
            double shown = whole.endsWith("position") ? Units.toDegrees(value) : value;
            return "{\"path\":\"" + whole + "\",\"value\":{\"" + path.substring(dot + 1) + "\":" + shown + "}}";
        }
        return "{\"path\":\"" + path + "\",\"value\":" + value + "}";
    }
}
