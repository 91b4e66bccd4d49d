package trimwright.ingest.n2k;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;

/**
 * Messages that take several frames, put together again. The first byte of each frame holds a sequence (3 bits) and the
 * frame's number in it (5 bits); the second byte of frame 0 the message's length. A frame out of turn ends the message.
 */
final class FastPackets {
    private static final int FRAME = 8;

    private static final class Partial {
        private final byte[] data = new byte[Frame.MOST_BYTES];
        private int sequence;
        private int next;
        private int filled;
        private int length;
    }

    private final Map<Long, Partial> partials = new HashMap<>();
    private final Issues issues;

    FastPackets(Issues issues) {
        this.issues = issues;
    }

    /** Takes a frame of such a message; true where it completes one, which then stands in the frame itself. */
    boolean complete(Frame frame, long line) {
        int sequence = frame.data[0] >> 5 & 7;
        int number = frame.data[0] & 31;
        long key = (long) frame.source << 32 | frame.pgn;
        Partial partial = number == 0 ? begin(key, sequence, frame, line) : partials.get(key);
        if (partial == null) {
            return false;
        }
        if (partial.sequence != sequence || partial.next != number) {
            drop(key, frame, line);
            return false;
        }
        int from = number == 0 ? 2 : 1;
        int count = Math.min(Math.min(frame.length, FRAME) - from, partial.length - partial.filled);
        if (count < 0) {
            drop(key, frame, line);
            return false;
        }
        System.arraycopy(frame.data, from, partial.data, partial.filled, count);
        partial.filled += count;
        partial.next++;
        if (partial.filled < partial.length) {
            return false;
        }
        System.arraycopy(partial.data, 0, frame.data, 0, partial.length);
        frame.length = partial.length;
        partials.remove(key);
        return true;
    }

    private @Nullable Partial begin(long key, int sequence, Frame frame, long line) {
        if (partials.containsKey(key)) {
            drop(key, frame, line);
        }
        if (frame.length < 2) {
            return null;
        }
        Partial partial = new Partial();
        partial.sequence = sequence;
        partial.length = frame.data[1] & 0xff;
        if (partial.length > Frame.MOST_BYTES) {
            return null;
        }
        partials.put(key, partial);
        return partial;
    }

    private void drop(long key, Frame frame, long line) {
        partials.remove(key);
        issues.add(IssueKind.BROKEN_MESSAGE, line, Integer.toString(frame.pgn));
    }
}
