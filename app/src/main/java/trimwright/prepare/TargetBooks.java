package trimwright.prepare;

import java.util.LinkedHashMap;
import java.util.Map;
import trimwright.target.TargetBook;
import trimwright.text.Progress;

/** Target books made while the program runs: who asks for the same one again finds it made. */
public final class TargetBooks {
    /** Chosen: two boats with two wings, before and after a change. */
    private static final int KEPT = 8;

    private final Map<TargetRequest, TargetBook> books = new LinkedHashMap<>(16, 0.75f, true);

    /** The book that is asked for. One is computed at a time, since it uses all processors. */
    public synchronized TargetBook of(TargetRequest request, Progress progress) throws InterruptedException {
        TargetBook known = books.get(request);
        if (known != null) {
            return known;
        }
        TargetBook made = TargetRun.of(request, progress);
        books.put(request, made);
        if (books.size() > KEPT) {
            books.remove(books.keySet().iterator().next());
        }
        return made;
    }
}
