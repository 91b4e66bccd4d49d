package trimwright.debrief;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.compare.OthersAir;
import trimwright.compare.SpeedLosses;
import trimwright.compare.SpeedSlopes;
import trimwright.compare.TrimLosses;
import trimwright.compare.TrimTable;
import trimwright.platform.Platform;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetRun;
import trimwright.segment.Leg;
import trimwright.segment.OnCourse;
import trimwright.segment.PointOfSail;
import trimwright.segment.Span;
import trimwright.target.TargetBook;
import trimwright.target.TargetPoint;
import trimwright.wind.Quantity;

/** What the model says about where speed went: slopes of speed in the winds of the session, and others' wakes. */
final class LossModel {
    private final @Nullable TrimTable table;
    private final @Nullable TargetBook book;
    private final double wingHeight;
    private final @Nullable Platform platform;

    private LossModel(
            @Nullable TrimTable table, @Nullable TargetBook book, double wingHeight, @Nullable Platform platform) {
        this.platform = platform;
        this.table = table;
        this.book = book;
        this.wingHeight = wingHeight;
    }

    /** Says nothing without boat file and targets. */
    static LossModel of(List<Debrief.Cut> cuts, DebriefOptions options) {
        Boat boat = options.boat();
        TargetBook book = options.book();
        if (boat == null || book == null) {
            return new LossModel(null, null, 0, null);
        }
        WingSpec wing = boat.getWing(book.wing());
        Sections sections = options.sections();
        Platform platform = TargetRun.platformOf(boat, wing, sections == null ? Sections.closedForm(wing) : sections);
        double head = wing.footHeight()
                + wing.stations().get(wing.stations().size() - 1).height();
        return new LossModel(table(platform, book, cuts), book, head, platform);
    }

    /** The boat as described, null where nothing is said. */
    @Nullable
    Platform platform() {
        return platform;
    }

    /** Nodes are found on any number of threads; none sees another. */
    private static TrimTable table(Platform platform, TargetBook book, List<Debrief.Cut> cuts) {
        double[] winds = {Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY};
        double[] reaches = winds.clone();
        for (Debrief.Cut cut : cuts) {
            for (Leg leg : cut.pieces().legs()) {
                widen(winds, cut, leg.span(), Quantity.TWS);
                if (leg.kind() == PointOfSail.REACHING) {
                    widen(reaches, cut, leg.span(), Quantity.COURSE_TWA);
                }
            }
        }
        List<TargetPoint> wanted = TrimTable.wanted(book, winds, reaches);
        List<@Nullable SpeedSlopes> found = IntStream.range(0, wanted.size())
                .parallel()
                .<@Nullable SpeedSlopes>mapToObj(i -> SpeedSlopes.of(platform, wanted.get(i)))
                .toList();
        Map<TargetPoint, SpeedSlopes> slopes = new LinkedHashMap<>();
        for (int i = 0; i < wanted.size(); i++) {
            SpeedSlopes slope = found.get(i);
            if (slope != null) {
                slopes.put(wanted.get(i), slope);
            }
        }
        return new TrimTable(book, slopes);
    }

    /** Means over phases would do; those of quarters of a leg are near enough and always there. */
    private static void widen(double[] range, Debrief.Cut cut, Span span, Quantity quantity) {
        for (int part = 0; part < 4; part++) {
            int from = span.from() + part * span.length() / 4;
            int to = Math.max(from + 1, span.from() + (part + 1) * span.length() / 4);
            double value = Math.abs(cut.wind().mean(quantity, from, to));
            if (!Double.isNaN(value)) {
                range[0] = Math.min(range[0], value);
                range[1] = Math.max(range[1], value);
            }
        }
    }

    /** How the targets of a boat's legs were to be sailed in their gusts; none without targets. */
    List<LegAim> aims(Debrief.Cut cut) {
        return platform == null || book == null ? List.of() : LegAim.listOf(platform, book, cut);
    }

    SpeedLosses of(Debrief.Cut cut) {
        OnCourse on = cut.on();
        if (table == null || book == null) {
            return SpeedLosses.none(cut.wind().size());
        }
        double[] clear = on == null
                ? OthersAir.unknown(cut.wind().size())
                : new OthersAir(cut.wind(), on.bow(), on.others(), book, wingHeight).clearWind();
        return TrimLosses.of(cut.wind(), cut.pieces(), table, clear);
    }
}
