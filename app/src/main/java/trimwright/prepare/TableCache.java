package trimwright.prepare;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import trimwright.profile.WingProfile;
import trimwright.section.SectionTable;
import trimwright.section.TableGrid;

/** Tables of computed sections on disk from one run of the program to the next. */
public final class TableCache {
    /** Chosen: tables of a few boats; some 80 kilobytes each. */
    private static final int KEPT = 20;

    private final KeptFiles files;

    /**
     * @param folder made when the first table is kept
     * @param notes told once, in one line, when tables cannot be kept
     */
    public TableCache(Path folder, Consumer<String> notes) {
        files = new KeptFiles(folder, ".sections", KEPT, notes);
    }

    /** The table kept for outlines by thickness over a grid, null where there is none that is whole. */
    @Nullable
    SectionTable find(List<WingProfile> profiles, TableGrid grid) {
        String key = TableKey.of(profiles, grid);
        byte[] bytes = key == null ? null : files.find(key);
        if (key == null || bytes == null) {
            return null;
        }
        SectionTable table = TableBytes.read(key, grid, bytes);
        if (table != null) {
            files.markUsed(key);
        }
        return table;
    }

    void keep(List<WingProfile> profiles, SectionTable table) {
        String key = TableKey.of(profiles, table.grid());
        if (key != null) {
            files.keep(key, TableBytes.write(key, table));
        }
    }
}
