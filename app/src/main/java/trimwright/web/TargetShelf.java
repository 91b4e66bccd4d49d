package trimwright.web;

import io.javalin.http.Context;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.BookAims;
import trimwright.prepare.SectionSource;
import trimwright.prepare.Sections;
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
    private final SectionShelf sections;
    private final BackgroundWork<MadeBook> work = new BackgroundWork<>(KEPT);

    TargetShelf(BoatShelf boats, TargetBooks books, SectionShelf sections) {
        this.boats = boats;
        this.books = books;
        this.sections = sections;
    }

    /** Sections that the wing's book is made with now. */
    Sections sections(BoatFile boat, WingSpec wing) {
        return sections.now(boat, wing);
    }

    void answer(Context ctx) {
        BoatFile boat = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(boat, Query.text(ctx, "wing"));
        answer(ctx, boat, wing, sections(boat, wing).source());
    }

    private void answer(Context ctx, BoatFile boat, WingSpec wing, SectionSource source) {
        TargetRequest request = request(boat, wing, source);
        double turbulence = Query.turbulence(ctx);
        work.answer(
                ctx,
                keyOf(boat, wing, source, turbulence),
                TargetRun.steps(request) + BookAims.steps(request),
                progress -> made(request, turbulence, progress));
    }

    private static TargetRequest request(BoatFile boat, WingSpec wing, SectionSource source) {
        return TargetRequest.of(boat, wing, TargetRequest.defaultGrid(), source);
    }

    /** The book of sections from there, or null where it is not made yet: then the request is answered with 202 and how far that has come. */
    @Nullable
    TargetBook findBook(Context ctx, BoatFile boat, WingSpec wing, SectionSource source) {
        String key = keyOf(boat, wing, source, Query.turbulence(ctx));
        MadeBook made = work.find(key);
        if (made == null) {
            answer(ctx, boat, wing, source);
            made = work.find(key);
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

    /** The book of a boat and wing with sections from there; computed now if it is not kept. */
    TargetBook get(BoatFile boat, WingSpec wing, SectionSource source, Progress progress) {
        return get(request(boat, wing, source), progress);
    }

    private TargetBook get(TargetRequest request, Progress progress) {
        try {
            return books.of(request, progress);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the workbench stops", e);
        }
    }

    private MadeBook made(TargetRequest request, double turbulence, Progress progress) {
        TargetBook book = get(request, progress);
        try {
            Sections sections = books.sectionsOf(request.wing(), request.section(), Progress.NONE);
            BookAims aims = BookAims.of(request, sections, book, turbulence, progress);
            return new MadeBook(book, Json.bytes(TargetDocument.of(request, book, aims)));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the workbench stops", e);
        }
    }

    private static String keyOf(BoatFile boat, WingSpec wing, SectionSource source, double turbulence) {
        return boat.setup() + " " + wing.id() + " " + source.key() + " " + turbulence;
    }

    @Override
    public void close() {
        work.close();
    }
}
