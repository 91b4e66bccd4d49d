package trimwright.dock;

import java.util.EnumMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.boat.Handling;
import trimwright.boat.TrimRange;
import trimwright.boat.WingSpec;
import trimwright.compare.Interval;
import trimwright.track.Paths;

/** Full swings of camber, twist and sheet: which gauge follows, which way, how far, how fast. */
final class Flaps {
    /** By how much a full swing may differ (rad): chosen; the wing is turned by hand, so more of it. */
    private static final double CAMBER = Math.toRadians(1);

    private static final double TWIST = Math.toRadians(1.5);

    private static final double SHEET = Math.toRadians(3);

    /** By how much a rate may differ, over what the boat file says (-): chosen. */
    private static final double RATE = 0.1;

    private static final String[] GAUGES = {Paths.CAMBER, Paths.TWIST, Paths.SHEET};

    private final Samples samples;
    private final @Nullable Handling handling;
    private final double seconds;
    private final Map<DockItem, Swing> swings = new EnumMap<>(DockItem.class);

    private Flaps(Samples samples, @Nullable Handling handling, double seconds) {
        this.samples = samples;
        this.handling = handling;
        this.seconds = seconds;
    }

    static Flaps of(Samples samples, Boat boat, WingSpec wing, double seconds) {
        Flaps flaps = new Flaps(samples, boat.handling(), seconds);
        TrimRange trim = wing.trim();
        double camber = trim.camberMax();
        double twist = Math.min(trim.twistMax(), camber - trim.headFlapMin());
        double sheet = trim.sheetMax();
        flaps.add(DockItem.CAMBER_STARBOARD, Paths.CAMBER, DockStep.CREW_STARBOARD, camber, camber);
        flaps.add(DockItem.CAMBER_PORT, Paths.CAMBER, DockStep.TWIST_BACK, -camber, -2 * camber);
        flaps.add(DockItem.TWIST_STARBOARD, Paths.TWIST, DockStep.CAMBER_STARBOARD, twist, twist);
        flaps.add(DockItem.TWIST_PORT, Paths.TWIST, DockStep.CAMBER_PORT, -twist, -twist);
        flaps.add(DockItem.SHEET_PORT, Paths.SHEET, DockStep.FLAP_BACK, sheet, sheet);
        flaps.add(DockItem.SHEET_STARBOARD, Paths.SHEET, DockStep.SHEET_PORT, -sheet, -2 * sheet);
        return flaps;
    }

    private void add(DockItem item, String path, DockStep before, double end, double way) {
        swings.put(item, new Swing(path, before, item.step(), end, way));
    }

    void addTo(Map<DockItem, DockLine> lines) {
        swings.forEach((item, swing) -> lines.put(item, full(item, swing)));
        Handling known = handling;
        double camber = known == null ? Double.NaN : known.rates().camber();
        double twist = known == null ? Double.NaN : known.rates().twist();
        rate(DockItem.CAMBER_RATE_STARBOARD, DockItem.CAMBER_STARBOARD, camber, lines);
        rate(DockItem.CAMBER_RATE_PORT, DockItem.CAMBER_PORT, camber, lines);
        rate(DockItem.TWIST_RATE_STARBOARD, DockItem.TWIST_STARBOARD, twist, lines);
        rate(DockItem.TWIST_RATE_PORT, DockItem.TWIST_PORT, twist, lines);
    }

    private DockLine full(DockItem item, Swing swing) {
        DockFinding finding = swing.finding(samples, GAUGES);
        double tolerance =
                swing.path().equals(Paths.SHEET) ? SHEET : swing.path().equals(Paths.TWIST) ? TWIST : CAMBER;
        if (finding == DockFinding.DEAD) {
            return DockLine.of(item, finding);
        }
        DockLine line = Judge.line(item, swing.stands(samples), swing.end(), tolerance);
        if (finding == DockFinding.SWAPPED) {
            return new DockLine(
                    item,
                    line.read(),
                    line.error(),
                    line.expected(),
                    line.tolerance(),
                    finding.usual(),
                    finding,
                    swing.inPlace(samples, GAUGES));
        }
        return finding == DockFinding.NONE ? line : line.with(finding);
    }

    private void rate(DockItem item, DockItem of, double expected, Map<DockItem, DockLine> lines) {
        Swing swing = swings.get(of);
        DockFinding finding = swing == null ? DockFinding.CANNOT_TELL : swing.finding(samples, GAUGES);
        boolean goes = finding == DockFinding.NONE || finding == DockFinding.SIGN;
        Interval rate = goes && swing != null ? swing.rate(samples) : null;
        if (rate == null) {
            lines.put(item, DockLine.of(item, DockFinding.CANNOT_TELL));
        } else if (Double.isNaN(expected)) {
            lines.put(item, Judge.alive(item, rate.mean(), Judge.half(rate)));
        } else {
            lines.put(item, Judge.line(item, rate, expected, RATE * expected));
        }
    }

    /** What is the matter with a gauge, by the swings made so far: the first that finds something. */
    DockFinding gauge(String path) {
        DockFinding worst = DockFinding.NONE;
        for (Map.Entry<DockItem, Swing> swing : swings.entrySet()) {
            if (swing.getValue().path().equals(path)
                    && seconds >= swing.getKey().step().heldTo()
                    && worst == DockFinding.NONE) {
                worst = swing.getValue().finding(samples, GAUGES);
            }
        }
        return worst;
    }
}
