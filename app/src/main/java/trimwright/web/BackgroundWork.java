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
 * Results that take longer to make than a request should wait. Who asks first starts the work; until it is done the
 * answer is 202 with {@code progress/1}, then 200 with the result's document. One piece of work at a time, as each uses
 * all processors; the results asked for last are kept.
 *
 * @param <T> what is made
 */
final class BackgroundWork<T extends BackgroundWork.Result> implements AutoCloseable {
    private final int kept;
    private final Map<String, Piece<T>> pieces = new LinkedHashMap<>(16, 0.75f, true);
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "workbench-work");
        thread.setDaemon(true);
        return thread;
    });

    /** @param kept how many results stay in memory */
    BackgroundWork(int kept) {
        this.kept = kept;
    }

    /** What work makes. */
    interface Result {
        /** The JSON document that a page gets. */
        byte[] document();
    }

    /** Makes a result; may be called on another thread. */
    interface Work<T> {
        /** @param progress told how many steps more are done */
        T run(Progress progress);
    }

    private static final class Piece<T> {
        private final AtomicLong done = new AtomicLong();
        private final long total;
        private volatile @Nullable T result;
        private volatile @Nullable Throwable failure;

        Piece(long total) {
            this.total = total;
        }

        void run(Work<T> work) {
            try {
                result = work.run(done::addAndGet);
            } catch (RuntimeException | Error e) {
                // Whatever it is, it is thrown again where the answer is waited for; else the page would wait for ever.
                failure = e;
            }
        }
    }

    /**
     * Answers with the result of that key, or with how far its making has come.
     *
     * @param total steps of the work
     */
    void answer(Context ctx, String key, long total, Work<T> work) {
        Piece<T> piece = start(key, total, work);
        Throwable failure = piece.failure;
        if (failure != null) {
            forget(key, piece);
            if (failure instanceof RuntimeException known) {
                throw known;
            }
            throw new IllegalStateException("the work for " + key + " failed", failure);
        }
        T result = piece.result;
        if (result != null) {
            ctx.contentType("application/json").result(result.document());
            return;
        }
        ObjectNode progress = JsonOut.document("progress/1");
        progress.put("done", piece.done.get()).put("total", piece.total);
        ctx.status(202);
        Json.send(ctx, progress);
    }

    /** The result of that key, or null where it is not made yet or no longer kept. */
    synchronized @Nullable T find(String key) {
        Piece<T> piece = pieces.get(key);
        return piece == null ? null : piece.result;
    }

    private synchronized Piece<T> start(String key, long total, Work<T> work) {
        Piece<T> known = pieces.get(key);
        if (known != null) {
            return known;
        }
        Piece<T> piece = new Piece<>(total);
        pieces.put(key, piece);
        if (pieces.size() > kept) {
            pieces.remove(pieces.keySet().iterator().next());
        }
        worker.execute(() -> piece.run(work));
        return piece;
    }

    private synchronized void forget(String key, Piece<T> piece) {
        pieces.remove(key, piece);
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }
}
