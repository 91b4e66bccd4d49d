package trimwright.prepare;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.target.TargetBook;
import trimwright.text.Progress;

/** Target books made while the program runs or before: who asks for the same one again finds it made. */
public final class TargetBooks {
    /** Chosen: two boats with two wings, before and after a change. */
    private static final int KEPT = 8;

    private final Map<TargetRequest, TargetBook> books = new LinkedHashMap<>(16, 0.75f, true);
    private final @Nullable BookCache cache;
    private final SectionTables tables;

    /** Books of this run only. */
    public TargetBooks() {
        this(null);
    }

    /** @param cache of books from earlier runs, null for none */
    public TargetBooks(@Nullable BookCache cache) {
        this(cache, new SectionTables());
    }

    /**
     * @param cache of books from earlier runs, null for none
     * @param tables of computed sections, for books that want these
     */
    public TargetBooks(@Nullable BookCache cache, SectionTables tables) {
        this.cache = cache;
        this.tables = tables;
    }

    /** Sections of a wing; tables that are not kept are computed now, unless another thread does already: then it is waited for. */
    public Sections sectionsOf(WingSpec wing, SectionSource source, Progress progress) throws InterruptedException {
        return source == SectionSource.COMPUTED ? tables.of(wing, progress) : Sections.closedForm(wing);
    }

    /** The book of a request if it was made before, null where it would have to be computed. */
    public synchronized @Nullable TargetBook find(TargetRequest request) {
        TargetBook known = books.get(request);
        return known != null || cache == null ? known : cache.find(request);
    }

    /** The book that is asked for. One is computed at a time, since it uses all processors. */
    public synchronized TargetBook of(TargetRequest request, Progress progress) throws InterruptedException {
        TargetBook book = find(request);
        if (book == null) {
            Sections sections = sectionsOf(request.wing(), request.section(), Progress.NONE);
            book = TargetRun.of(request, sections.family(), Runtime.getRuntime().availableProcessors(), progress);
            if (cache != null) {
                cache.keep(request, book);
            }
        }
        books.put(request, book);
        if (books.size() > KEPT) {
            books.remove(books.keySet().iterator().next());
        }
        return book;
    }
}
