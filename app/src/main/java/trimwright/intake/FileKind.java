package trimwright.intake;

import java.util.Arrays;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.ingest.journal.JournalText;
import trimwright.ingest.n2k.N2kReader;
import trimwright.ingest.nmea.ChecksumRule;
import trimwright.ingest.nmea.NmeaScanner;
import trimwright.ingest.signalk.DeltaLogReader;

/** What a file seems to be, from its first bytes. */
enum FileKind {
    /** Nothing in it. */
    EMPTY,
    /** The journal of a live recording. */
    JOURNAL,
    /** Sentences of NMEA 0183. */
    NMEA,
    /** Frames of NMEA 2000 in text. */
    NMEA_2000,
    /** Deltas of Signal K, one a line. */
    SIGNAL_K,
    /** A track in GPX. */
    GPX,
    /** Text with two bytes for each character. */
    TEXT_OF_16_BITS,
    /** Other text: perhaps a table. */
    TEXT,
    /** No text. */
    BINARY;

    /** As reports and the library name it. */
    String word() {
        return switch (this) {
            case JOURNAL -> "journal";
            case NMEA -> "nmea0183";
            case NMEA_2000 -> "nmea2000";
            case SIGNAL_K -> "signalk";
            case GPX -> "gpx";
            default -> "csv";
        };
    }

    /** Bytes that are looked at: more than the preamble of any logger. Chosen. */
    static final int HEAD = 1 << 18;

    /** Chosen: text has hardly any control characters, also after a crash of its logger. */
    private static final double CONTROL_SHARE = 0.02;

    static FileKind of(byte[] head, int length) {
        if (length == 0) {
            return EMPTY;
        }
        byte[] first = JournalText.firstLine();
        if (length >= first.length && Arrays.equals(head, 0, first.length, first, 0, first.length)) {
            return JOURNAL;
        }
        Issues issues = new Issues();
        long[] sentences = new long[1];
        NmeaScanner scanner =
                new NmeaScanner(issues, ChecksumRule.REQUIRED, (sentence, line, position, stamp) -> sentences[0]++);
        scanner.accept(head, 0, length);
        if (sentences[0] > 0) {
            return NMEA;
        }
        if (N2kReader.isLikely(head, length)) {
            return NMEA_2000;
        }
        if (DeltaLogReader.isLikely(head, length)) {
            return SIGNAL_K;
        }
        if (GpxReader.isLikely(head, length)) {
            return GPX;
        }
        if (isOf16Bits(head, length)) {
            return TEXT_OF_16_BITS;
        }
        if (isBinary(head, length)) {
            return BINARY;
        }
        long like = issues.count(IssueKind.NO_CHECKSUM) + issues.count(IssueKind.BAD_CHECKSUM);
        return 2 * like > scanner.lines() ? NMEA : TEXT;
    }

    private static boolean isOf16Bits(byte[] head, int length) {
        if (length >= 2) {
            int mark = (head[0] & 0xff) << 8 | (head[1] & 0xff);
            if (mark == 0xfeff || mark == 0xfffe) {
                return true;
            }
        }
        int even = 0;
        int odd = 0;
        for (int i = 0; i < length; i++) {
            if (head[i] == 0) {
                even += 1 - i % 2;
                odd += i % 2;
            }
        }
        // Latin text in two bytes has a zero in nearly every other place.
        return Math.max(even, odd) > 0.4 * length / 2 && Math.min(even, odd) < 0.05 * length / 2;
    }

    private static boolean isBinary(byte[] head, int length) {
        int control = 0;
        for (int i = 0; i < length; i++) {
            byte b = head[i];
            control += b >= 0 && b < 0x20 && b != '\n' && b != '\r' && b != '\t' ? 1 : 0;
        }
        return control > CONTROL_SHARE * length;
    }
}
