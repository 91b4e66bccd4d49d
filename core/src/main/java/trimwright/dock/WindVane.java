package trimwright.dock;

import java.util.Arrays;
import java.util.Map;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.compare.Interval;
import trimwright.track.Paths;
import trimwright.units.Angles;

/**
 * The wind sensor: whether it turns with the wing (the wind stays, the wing is turned), which way it counts, how it stands when the wing
 * has found the wind, and by how much its clock is behind that of the sheet gauge.
 */
final class WindVane {
    /** By how much the change of angle may differ from the sheet's (-): chosen; half way tells one kind from the other. */
    private static final double SLOPE = 0.3;

    private static final double HALF_WAY = 0.5;

    /** By how much it may stand askew on a free wing (rad): chosen, a free wing finds the wind no better. */
    private static final double ASKEW = Math.toRadians(2);

    /** Difference of clocks that a debrief bears (s): chosen, with what lag a vane has. */
    private static final double BEHIND = 2;

    /** Differences of clocks that are tried (s). */
    private static final double MOST_BEHIND = 5;

    private static final double STEP = 0.1;

    private static final double BOTH_SIDES = 0.975;

    private final Samples samples;
    private final boolean turns;
    private final DockFinding sheet;
    private final DockLine slope;

    WindVane(Samples samples, Boat boat, Flaps flaps) {
        this.samples = samples;
        turns = boat.windSensor().turnsWithWing();
        sheet = flaps.gauge(Paths.SHEET);
        slope = slope();
    }

    void addTo(Map<DockItem, DockLine> lines) {
        lines.put(DockItem.WIND_TURNS, slope);
        lines.put(DockItem.WIND_ALIGNMENT, alignment());
        lines.put(DockItem.WIND_SPEED, speed());
        lines.put(DockItem.CLOCK, clock());
    }

    /** 1 or -1 as the sheet gauge counts; 0 where it cannot be used. */
    private double sheetSign() {
        return sheet == DockFinding.NONE ? 1 : sheet == DockFinding.SIGN ? -1 : 0;
    }

    private DockLine slope() {
        Window angle = samples.of(Paths.AWA);
        if (!angle.isHeard()) {
            return DockLine.of(DockItem.WIND_TURNS, DockFinding.DEAD);
        }
        Window port = samples.held(Paths.AWA, DockStep.SHEET_PORT);
        Window starboard = samples.held(Paths.AWA, DockStep.SHEET_STARBOARD);
        if (angle.longestStill() >= Zeros.STILL) {
            return DockLine.of(DockItem.WIND_TURNS, DockFinding.FROZEN);
        }
        Window sheetPort = samples.held(Paths.SHEET, DockStep.SHEET_PORT);
        Window sheetStarboard = samples.held(Paths.SHEET, DockStep.SHEET_STARBOARD);
        if (sheetSign() == 0 || !port.isHeard() || !starboard.isHeard()) {
            return DockLine.of(DockItem.WIND_TURNS, DockFinding.CANNOT_TELL);
        }
        double turned = sheetSign()
                * Angles.difference(
                        sheetStarboard.angle().mean(), sheetPort.angle().mean());
        double read = Angles.difference(starboard.angle().mean(), port.angle().mean()) / turned;
        double half = byItself(angle) / Math.abs(turned);
        DockLine line = Judge.line(DockItem.WIND_TURNS, read, half, turns ? -1 : 0, SLOPE);
        if (read > HALF_WAY) {
            return line.with(DockFinding.SIGN);
        }
        boolean seen = read < -HALF_WAY;
        return seen == turns ? line : line.with(seen ? DockFinding.TURNS : DockFinding.DOES_NOT_TURN);
    }

    /** What the wind turns by itself from one step to the next (rad, 95 %): by how much it did while the wing was pinned. */
    private static double byItself(Window angle) {
        double apart = DockStep.SHEET_STARBOARD.begin() - DockStep.SHEET_PORT.begin();
        double held = DockStep.SHEET_PORT.heldTo() - DockStep.SHEET_PORT.heldFrom();
        double square = 0;
        int count = 0;
        double before = Double.NaN;
        for (double at = 0; at + held <= DockStep.SHEET_PORT.begin(); at += apart) {
            Window span = angle.between(at, at + held);
            double mean = span.isHeard() ? span.angle().mean() : Double.NaN;
            double turned = Angles.difference(mean, before);
            if (!Double.isNaN(turned)) {
                square += turned * turned;
                count++;
            }
            before = mean;
        }
        return count == 0
                ? Double.NaN
                : new TDistribution(count).inverseCumulativeProbability(BOTH_SIDES) * Math.sqrt(square / count);
    }

    /** On a free wing the wind is on the chord: the sensor must say so. */
    private DockLine alignment() {
        Window angle = samples.held(Paths.AWA, DockStep.WING_FREE);
        if (slope.finding() == DockFinding.DEAD || slope.finding() == DockFinding.FROZEN) {
            return DockLine.of(DockItem.WIND_ALIGNMENT, slope.finding());
        }
        if (!angle.isHeard()) {
            return DockLine.of(DockItem.WIND_ALIGNMENT, DockFinding.DEAD);
        }
        Window askew = turns ? angle : angle.less(samples.held(Paths.SHEET, DockStep.WING_FREE), sheetSign());
        if (!askew.isHeard() || (!turns && sheetSign() == 0)) {
            return DockLine.of(DockItem.WIND_ALIGNMENT, DockFinding.CANNOT_TELL);
        }
        DockLine line = Judge.line(DockItem.WIND_ALIGNMENT, askew.angle(), 0, ASKEW);
        // Of a sensor of another kind, or that counts the other way, or of which neither is known, this says nothing.
        boolean unknown = slope.verdict() == DockFinding.Verdict.STOP || slope.finding() == DockFinding.CANNOT_TELL;
        return unknown ? line.with(DockFinding.CANNOT_TELL) : line;
    }

    private DockLine speed() {
        Window held = samples.held(Paths.AWS, DockStep.STILL);
        if (!held.isHeard()) {
            return DockLine.of(DockItem.WIND_SPEED, DockFinding.DEAD);
        }
        DockLine line = Judge.alive(DockItem.WIND_SPEED, held.number().mean(), Judge.half(held.number()));
        return samples.of(Paths.AWS).longestStill() >= Zeros.STILL ? line.with(DockFinding.FROZEN) : line;
    }

    private DockLine clock() {
        double way = slope.finding() == DockFinding.SIGN ? 1 : -1;
        boolean seen = slope.finding() == DockFinding.SIGN || slope.read() < -HALF_WAY;
        if (!seen || sheetSign() == 0) {
            return DockLine.of(DockItem.CLOCK, DockFinding.CANNOT_TELL);
        }
        double[] found = {
            behind(DockStep.SHEET_PORT, way), behind(DockStep.SHEET_STARBOARD, way), behind(DockStep.WING_FREE, way)
        };
        double mean = (found[0] + found[1] + found[2]) / found.length;
        double square = 0;
        for (double one : found) {
            square += (one - mean) * (one - mean) / (found.length - 1);
        }
        double half = new TDistribution(found.length - 1).inverseCumulativeProbability(BOTH_SIDES)
                * Math.sqrt(square / found.length);
        return Judge.line(DockItem.CLOCK, new Interval(mean, mean - half, mean + half, found.length), 0, BEHIND);
    }

    /** By how much the wind angle follows later than the sheet in one swing (s): where its way fits the sheet's best. */
    private double behind(DockStep step, double way) {
        Window angle = samples.of(Paths.AWA).between(step.begin() - STEP, step.heldFrom());
        Window gauge = samples.of(Paths.SHEET);
        double best = Double.NaN;
        double least = Double.POSITIVE_INFINITY;
        for (int k = (int) Math.round(-MOST_BEHIND / STEP); k <= MOST_BEHIND / STEP; k++) {
            @Nullable Double spread = spread(angle, gauge, k * STEP, way * sheetSign());
            if (spread != null && spread < least) {
                least = spread;
                best = k * STEP;
            }
        }
        return best;
    }

    private static @Nullable Double spread(Window angle, Window gauge, double behind, double way) {
        double[] rest = new double[angle.size()];
        double[] times = new double[angle.size()];
        int n = 0;
        for (int i = 0; i < angle.size(); i++) {
            double sheet = gauge.angleAt(angle.time(i) - behind);
            if (!Double.isNaN(sheet)) {
                times[n] = angle.time(i);
                rest[n++] = Angles.signed(angle.get(i) - way * sheet);
            }
        }
        Window left = new Window(Arrays.copyOf(times, n), Arrays.copyOf(rest, n));
        return left.isHeard() ? left.deviation() : null;
    }
}
