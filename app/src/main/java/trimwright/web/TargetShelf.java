package trimwright.web;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
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
    private final BackgroundWork<MadeBook> work = new BackgroundWork<>(KEPT);
    private final Map<String, MadeBook> books = new LinkedHashMap<>(16, 0.75f, true);

    TargetShelf(BoatShelf boats) {
        this.boats = boats;
    }

    void answer(Context ctx) {
        BoatFile boat = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(boat, Query.text(ctx, "wing"));
        work.answer(ctx, keyOf(boat, wing), steps(boat, wing), progress -> made(boat, wing, progress));
    }

    /** Steps of computing the book of that boat and wing. */
    long steps(BoatFile boat, WingSpec wing) {
        return TargetRun.steps(TargetRequest.of(boat, wing));
    }

    /** The book of a boat and wing; computed now if it is not kept. */
    TargetBook get(BoatFile boat, WingSpec wing, Progress progress) {
        return made(boat, wing, progress).book();
    }

    /** One at a time: a book uses all processors, and who waits for the same one finds it made. */
    private synchronized MadeBook made(BoatFile boat, WingSpec wing, Progress progress) {
        MadeBook known = books.get(keyOf(boat, wing));
        if (known != null) {
            return known;
        }
        TargetRequest request = TargetRequest.of(boat, wing);
        TargetBook book;
        try {
            book = TargetRun.of(request, progress);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the workbench stops", e);
        }
        MadeBook made = new MadeBook(book, Json.bytes(TargetDocument.of(boat, book)));
        books.put(keyOf(boat, wing), made);
        if (books.size() > KEPT) {
            books.remove(books.keySet().iterator().next());
        }
        return made;
    }

    private static String keyOf(BoatFile boat, WingSpec wing) {
        return boat.hash() + " " + wing.id();
    }

    @Override
    public void close() {
        work.close();
    }
}
