package trimwright.prepare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boat.WingStation;
import trimwright.polar.ColumnMaker;
import trimwright.polar.NoPolarException;
import trimwright.profile.WingProfile;
import trimwright.section.SectionColumn;
import trimwright.section.SectionShape;
import trimwright.section.SectionTable;
import trimwright.section.TableGrid;
import trimwright.text.NoAnswerException;
import trimwright.text.Progress;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.wing.Wing;

/**
 * Tables of computed sections, made while the program runs or before. Wings whose sections are alike share a table.
 *
 * <p>Columns are computed on a fixed pool, one thickness and Reynolds number a task; none sees another, so the table is the
 * same on any number of threads.
 */
public final class SectionTables {
    /** Least difference of thickness (-) for which a table has a node between; chosen, with a step of 0.04 on a usual wing. */
    private static final double THICKNESS_STEP = 0.06;

    private final Map<List<WingProfile>, SectionTable> tables = new LinkedHashMap<>();
    private final @Nullable TableCache cache;

    /** Tables of this run only. */
    public SectionTables() {
        this(null);
    }

    /** @param cache of tables from earlier runs, null for none */
    public SectionTables(@Nullable TableCache cache) {
        this.cache = cache;
    }

    /** Steps that {@link Progress} is told about: one a column. */
    public static long steps(WingSpec wing) {
        TableGrid grid = TableGrid.of(thicknesses(wing));
        return (long) grid.thicknesses().size() * grid.reynolds().size();
    }

    /**
     * Sections of a wing from its tables, which are computed now if they are not kept.
     *
     * @throws UserInputException if the boat file gives the wing no slot
     * @throws NoAnswerException if no flow is found about its sections
     */
    public Sections of(WingSpec wing, Progress progress) throws InterruptedException {
        return new Sections(SectionSource.COMPUTED, tableOf(wing, progress).family(Wing.aspectRatio(wing)));
    }

    /** One is computed at a time, since it uses all processors. */
    synchronized SectionTable tableOf(WingSpec wing, Progress progress) throws InterruptedException {
        TableGrid grid = TableGrid.of(thicknesses(wing));
        List<WingProfile> profiles = profilesOf(wing);
        SectionTable table = tables.get(profiles);
        if (table == null && cache != null) {
            table = cache.find(profiles, grid);
        }
        if (table == null) {
            table = compute(profiles, grid, Runtime.getRuntime().availableProcessors(), progress);
            if (cache != null) {
                cache.keep(profiles, table);
            }
        }
        tables.put(profiles, table);
        return table;
    }

    static SectionTable compute(List<WingProfile> profiles, TableGrid grid, int threads, Progress progress)
            throws InterruptedException {
        int perRow = grid.reynolds().size();
        List<Integer> pieces = new ArrayList<>();
        for (int i = 0; i < profiles.size() * perRow; i++) {
            pieces.add(i);
        }
        List<SectionColumn> columns;
        try {
            columns = InParallel.map("sections", threads, pieces, i -> {
                SectionColumn column =
                        ColumnMaker.of(profiles.get(i / perRow), grid.reynolds().get(i % perRow), grid);
                progress.done(1);
                return column;
            });
        } catch (IllegalStateException e) {
            if (e.getCause() instanceof NoPolarException none) {
                throw new NoAnswerException(Texts.of("sections.none", String.valueOf(none.getMessage())));
            }
            throw e;
        }
        List<List<SectionColumn>> rows = new ArrayList<>();
        for (int t = 0; t < profiles.size(); t++) {
            rows.add(columns.subList(t * perRow, (t + 1) * perRow));
        }
        return new SectionTable(grid, rows);
    }

    /** The outlines that a wing's table is made of, by thickness. */
    static List<WingProfile> profilesOf(WingSpec wing) {
        SectionShape shape = Wing.shapeAt(wing, 0);
        if (!(shape.slotGapRatio() > 0)) {
            throw new UserInputException(Texts.of("sections.no_slot", wing.id()));
        }
        return thicknesses(wing).stream()
                .map(thickness -> FlowRequest.profileOf(new SectionShape(
                        shape.flapChordRatio(), shape.turningAxisRatio(), shape.slotGapRatio(), thickness)))
                .toList();
    }

    /** Nodes from the least to the greatest of the wing: one if these are one, two if they are near, else one between. */
    private static List<Double> thicknesses(WingSpec wing) {
        double least = stations(wing).min().orElseThrow();
        double most = stations(wing).max().orElseThrow();
        if (most == least) {
            return List.of(least);
        }
        return most - least < THICKNESS_STEP ? List.of(least, most) : List.of(least, 0.5 * (least + most), most);
    }

    private static DoubleStream stations(WingSpec wing) {
        return wing.stations().stream().mapToDouble(WingStation::thicknessRatio);
    }
}
