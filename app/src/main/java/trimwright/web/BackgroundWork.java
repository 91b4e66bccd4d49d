package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import trimwright.text.JsonOut;
import trimwright.text.Progress;

/**
 * Documents that take longer to make than a request should wait. Who asks first starts the work; until it is done the
 * answer is 202 with {@code progress/1}, then 200 with the document. One piece of work at a time, as each uses all
 * processors; the documents made last are kept.
 */
final class BackgroundWork implements AutoCloseable {
    /** Chosen: two boats with two wings, before and after a change. */
    private static final int KEPT = 8;

    private final Map<String, Piece> pieces = new LinkedHashMap<>(16, 0.75f, true);
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "workbench-work");
        thread.setDaemon(true);
        return thread;
    });

    /** Makes a document. */
    interface Work {
        /** @param progress told how many steps more are done */
        byte[] run(Progress progress);
    }

    private static final class Piece {
        private final AtomicLong done = new AtomicLong();
        private final long total;
        private volatile byte @Nullable [] document;
        private volatile @Nullable RuntimeException failure;

        Piece(long total) {
            this.total = total;
        }

        void run(Work work) {
            try {
                document = work.run(done::addAndGet);
            } catch (RuntimeException e) {
                // Whatever it is, it is thrown again where the answer is waited for.
                failure = e;
            }
        }
    }

    /**
     * Answers with the document of that key, or with how far its making has come.
     *
     * @param total steps of the work; 0 where it cannot be told
     */
    void answer(Context ctx, String key, long total, Work work) {
        Piece piece = start(key, total, work);
        RuntimeException failure = piece.failure;
        if (failure != null) {
            forget(key, piece);
            throw failure;
        }
        byte[] document = piece.document;
        if (document != null) {
            ctx.contentType("application/json").result(document);
            return;
        }
        ObjectNode progress = JsonOut.document("progress/1");
        progress.put("done", piece.done.get()).put("total", piece.total);
        ctx.status(202);
        Json.send(ctx, progress);
    }

    private synchronized Piece start(String key, long total, Work work) {
        Piece known = pieces.get(key);
        if (known != null) {
            return known;
        }
        Piece piece = new Piece(total);
        pieces.put(key, piece);
        if (pieces.size() > KEPT) {
            pieces.remove(pieces.keySet().iterator().next());
        }
        worker.execute(() -> piece.run(work));
        return piece;
    }

    private synchronized void forget(String key, Piece piece) {
        pieces.remove(key, piece);
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }
}
