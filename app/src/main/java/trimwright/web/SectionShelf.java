package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.SectionSource;
import trimwright.prepare.SectionTables;
import trimwright.prepare.Sections;
import trimwright.text.JsonOut;
import trimwright.text.NoAnswerException;
import trimwright.text.Progress;
import trimwright.text.UserInputException;

/**
 * Sections of the wings on the pages. Where computed ones are wanted their tables are made in the background; until they are
 * there, or where they cannot be, it is the closed form, and {@code /api/sections} says so.
 */
final class SectionShelf implements Routes {
    /** Time (ms) that the first question waits: tables kept on disk are there by then. Chosen. */
    private static final long KEPT_MILLIS = 400;

    private final BoatShelf boats;
    private final SectionSource wanted;
    private final Maker maker;
    private final Map<String, Making> makings = new ConcurrentHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "section-tables");
        thread.setDaemon(true);
        return thread;
    });

    /**
     * @param wanted where sections shall come from
     * @param maker of computed ones
     */
    SectionShelf(BoatShelf boats, SectionSource wanted, Maker maker) {
        this.boats = boats;
        this.wanted = wanted;
        this.maker = maker;
    }

    /** Makes computed sections of a wing, or finds them made. */
    @FunctionalInterface
    interface Maker {
        /** @param progress told how many columns more are done */
        Sections make(WingSpec wing, Progress progress) throws InterruptedException;
    }

    private static final class Making {
        private final long total;
        private final AtomicLong done = new AtomicLong();
        private final CountDownLatch ended = new CountDownLatch(1);
        private volatile @Nullable Sections sections;
        private volatile @Nullable String reason;

        Making(long total) {
            this.total = total;
        }
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/sections", this::send);
    }

    /** Sections of a wing as they can be had now. */
    Sections now(BoatFile boat, WingSpec wing) {
        Making making = wanted == SectionSource.COMPUTED ? making(boat, wing) : null;
        Sections computed = making == null ? null : making.sections;
        return computed == null ? Sections.closedForm(wing) : computed;
    }

    private Making making(BoatFile boat, WingSpec wing) {
        String key = boat.hash() + " " + wing.id();
        Making known = makings.get(key);
        if (known != null) {
            return known;
        }
        Making making = new Making(SectionTables.steps(wing));
        Making other = makings.putIfAbsent(key, making);
        if (other != null) {
            return other;
        }
        worker.execute(() -> make(making, wing));
        try {
            making.ended.await(KEPT_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return making;
    }

    private void make(Making making, WingSpec wing) {
        try {
            making.sections = maker.make(wing, making.done::addAndGet);
        } catch (UserInputException | NoAnswerException e) {
            // The wing stays in closed form, and the page says why.
            making.reason = e.getMessage();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            making.ended.countDown();
        }
    }

    /** {@code sections/1}: which sections are wanted, which a wing has now, and how far their making has come. */
    private void send(Context ctx) {
        BoatFile boat = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(boat, Query.text(ctx, "wing"));
        ObjectNode document = JsonOut.document("sections/1")
                .put("wanted", wanted.key())
                .put("section", now(boat, wing).source().key());
        if (wanted == SectionSource.COMPUTED) {
            Making making = making(boat, wing);
            document.put("done", making.done.get()).put("total", making.total).put("reason", making.reason);
        }
        Json.send(ctx, document);
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }
}
