package trimwright.web;

import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetDocument;
import trimwright.prepare.TargetRequest;
import trimwright.prepare.TargetRun;
import trimwright.target.TargetBook;
import trimwright.text.Progress;

/** Computes target books on the default grid, as {@code trimwright targets --json} does, and keeps the last ones. */
final class TargetShelf implements AutoCloseable {
    /** Chosen: two boats with two wings, before and after a change. */
    private static final int KEPT = 8;

    private final BoatShelf boats;
    private final TargetBooks books;
    private final BackgroundWork<MadeBook> work = new BackgroundWork<>(KEPT);

    TargetShelf(BoatShelf boats, TargetBooks books) {
        this.boats = boats;
        this.books = books;
    }

    void answer(Context ctx) {
        BoatFile boat = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(boat, Query.text(ctx, "wing"));
        answer(ctx, boat, wing);
    }

    private void answer(Context ctx, BoatFile boat, WingSpec wing) {
        work.answer(ctx, keyOf(boat, wing), steps(boat, wing), progress -> made(boat, wing, progress));
    }

    /** The book, or null where it is not made yet: then the request is answered with 202 and how far that has come. */
    @Nullable
    TargetBook findBook(Context ctx, BoatFile boat, WingSpec wing) {
        MadeBook made = work.find(keyOf(boat, wing));
        if (made == null) {
            answer(ctx, boat, wing);
            made = work.find(keyOf(boat, wing));
        }
        if (made == null) {
            return null;
        }
        ctx.status(200);
        return made.book();
    }

    /** Steps of computing the book of that boat and wing. */
    long steps(BoatFile boat, WingSpec wing) {
        return TargetRun.steps(TargetRequest.of(boat, wing));
    }

    /** The book of a boat and wing; computed now if it is not kept. */
    TargetBook get(BoatFile boat, WingSpec wing, Progress progress) {
        try {
            return books.of(TargetRequest.of(boat, wing), progress);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the workbench stops", e);
        }
    }

    private MadeBook made(BoatFile boat, WingSpec wing, Progress progress) {
        TargetBook book = get(boat, wing, progress);
        return new MadeBook(book, Json.bytes(TargetDocument.of(boat, book)));
    }

    private static String keyOf(BoatFile boat, WingSpec wing) {
        return boat.hash() + " " + wing.id();
    }

    @Override
    public void close() {
        work.close();
    }
}
