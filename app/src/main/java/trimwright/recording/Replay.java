package trimwright.recording;

import java.util.List;
import trimwright.store.StoredSession;

/** Pushes a session's bytes to a follower as a recorder would, at so many times the pace at which they came. */
public final class Replay implements AutoCloseable {
    /** Chosen: as the recorder's. */
    private static final long TICK_NANOS = 50_000_000L;

    private final List<Piece> pieces;
    private final double rate;
    private final Follower follower;
    private final Thread thread;
    private volatile boolean closed;

    private Replay(List<Piece> pieces, double rate, Follower follower) {
        this.pieces = pieces;
        this.rate = rate;
        this.follower = follower;
        thread = new Thread(this::run, "replay");
        thread.setDaemon(true);
    }

    /**
     * Reads the session and begins.
     *
     * @param rate times the pace at which it was recorded
     */
    public static Replay begin(StoredSession session, double rate, Follower follower) {
        Replay replay = new Replay(SessionPieces.of(session), rate, follower);
        replay.thread.start();
        return replay;
    }

    /** All at once, on this thread. */
    static void atOnce(StoredSession session, Follower follower) {
        long ticked = 0;
        for (Piece piece : SessionPieces.of(session)) {
            follower.take(piece.source(), piece.nanos(), piece.bytes());
            if (piece.nanos() >= ticked + TICK_NANOS) {
                ticked = piece.nanos();
                follower.tick(ticked);
            }
        }
    }

    private void run() {
        if (pieces.isEmpty()) {
            return;
        }
        long first = pieces.get(0).nanos();
        long last = pieces.get(pieces.size() - 1).nanos();
        long begun = System.nanoTime();
        int next = 0;
        // A little beyond the end, so that the page shows the data grow old as it would afloat.
        while (!closed) {
            long now = first + (long) ((System.nanoTime() - begun) * rate);
            while (next < pieces.size() && pieces.get(next).nanos() <= now) {
                Piece piece = pieces.get(next++);
                follower.take(piece.source(), piece.nanos(), piece.bytes());
            }
            follower.tick(Math.min(now, last + 3_600_000_000_000L));
            try {
                Thread.sleep(TICK_NANOS / 1_000_000);
            } catch (InterruptedException e) {
                // Only close() interrupts.
                return;
            }
        }
    }

    /** Waits until it is closed. */
    public void await() throws InterruptedException {
        thread.join();
    }

    @Override
    public void close() {
        closed = true;
        thread.interrupt();
    }
}
