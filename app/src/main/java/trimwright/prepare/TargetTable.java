package trimwright.prepare;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trimwright.aim.Aim;
import trimwright.boat.BoatMarks;
import trimwright.boat.MarkedControl;
import trimwright.platform.Variable;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetLimit;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.text.FixedDecimals;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** A target book as text: a table for people, comma-separated values for other programs. */
public final class TargetTable {
    private TargetTable() {}

    /**
     * The better branch at each node, one line a point, with what gusts leave to be carried; a point without a target says why.
     *
     * @param marks what the crew reads: controls that bear marks stand in them
     */
    public static String text(TargetBook book, BookAims aims, BoatMarks marks) {
        TextTable table = new TextTable(Texts.of("targets.head"));
        MarkedCells cells = new MarkedCells(marks, book.wing());
        for (TargetPoint point : book.listBest()) {
            table.row(point.isSolved() ? solved(point, cells, aims.find(point)) : unsolved(point));
        }
        return table.text();
    }

    private static List<String> solved(TargetPoint point, MarkedCells cells, @Nullable Aim aim) {
        Target t = point.getTarget();
        return List.of(
                knots(point.trueWindSpeed(), 0),
                Texts.of("targets.mode." + point.mode().key()),
                degrees(point.trueWindAngle(), point.mode() == TargetMode.ANGLE ? 0 : 1),
                knots(t.boatSpeed(), 1),
                knots(t.velocityMadeGood(), 1),
                degrees(t.apparentWindAngle(), 1),
                knots(t.apparentWindSpeed(), 1),
                cells.banded(MarkedControl.CAMBER, t.trim().camber(), t.bands().camber()),
                cells.banded(MarkedControl.TWIST, t.trim().twist(), t.bands().twist()),
                cells.banded(MarkedControl.SHEET, t.trim().sheet(), t.bands().sheet()),
                degrees(t.attitude().heel(), 1),
                decimal(t.attitude().rideHeight(), 2),
                degrees(t.attitude().leeway(), 1),
                decimal(t.loads().sheetLoad() / 1000, 1),
                decimal(t.loads().rightingMoment() / 1000, 0),
                aim == null ? "-" : decimal(aim.levels().loadAim() / 1000, 1),
                aim == null ? "-" : decimal(aim.levels().momentAim() / 1000, 0),
                aim == null ? "-" : aimTrim(aim),
                aim == null ? "-" : knots(aim.lost(), 1),
                Texts.of(point.isFoiling() ? "targets.foiling" : "targets.on_hulls"),
                aim == null ? joined(remarks(t), Texts.of("targets.no_aim")) : remarks(t));
    }

    private static String joined(String remarks, String other) {
        return remarks.isEmpty() ? other : remarks + "; " + other;
    }

    /** Camber, twist and sheet, in degrees. */
    private static String aimTrim(Aim aim) {
        return Stream.of(Variable.CAMBER, Variable.TWIST, Variable.SHEET)
                .map(variable -> degrees(aim.state().get(variable), 0))
                .collect(Collectors.joining("/"));
    }

    private static List<String> unsolved(TargetPoint point) {
        List<String> cells = new ArrayList<>(List.of(
                knots(point.trueWindSpeed(), 0),
                Texts.of("targets.mode." + point.mode().key())));
        cells.add(point.mode() == TargetMode.ANGLE ? degrees(point.trueWindAngle(), 0) : "-");
        while (cells.size() < 20) {
            cells.add("-");
        }
        cells.add(String.valueOf(point.reason()));
        return cells;
    }

    private static String remarks(Target target) {
        List<String> remarks = new ArrayList<>();
        for (TargetLimit limit : target.limits()) {
            remarks.add(Texts.of("web.limit_short." + limit.key()));
        }
        String limits = String.join(", ", remarks);
        String caveats = target.caveats().stream().map(TargetCaveat::sentence).collect(Collectors.joining(", "));
        return caveats.isEmpty() ? limits : limits.isEmpty() ? "(" + caveats + ")" : limits + " (" + caveats + ")";
    }

    /** The better branch at each node: keys of the JSON document as header, one line a point. */
    public static String csv(TargetBook book, BookAims aims) {
        StringBuilder text = new StringBuilder("mode,tws_kn,twa_deg,solved,reason,foiling");
        TargetColumn.ALL.forEach(column -> text.append(',').append(column.key()));
        AimColumn.ALL.forEach(column -> text.append(',').append(column.key()));
        text.append(",limits,caveats\n");
        for (TargetPoint point : book.listBest()) {
            text.append(point.mode().key());
            text.append(',').append(fixed("tws_kn", Units.toKnots(point.trueWindSpeed())));
            text.append(',').append(fixed("twa_deg", Units.toDegrees(point.trueWindAngle())));
            text.append(',').append(point.isSolved());
            text.append(',').append(point.isSolved() ? "" : quoted(String.valueOf(point.reason())));
            text.append(',').append(point.isSolved() ? String.valueOf(point.isFoiling()) : "");
            for (TargetColumn column : TargetColumn.ALL) {
                text.append(',');
                if (point.isSolved()) {
                    text.append(fixed(column.key(), column.value().applyAsDouble(point)));
                }
            }
            Aim aim = aims.find(point);
            for (AimColumn column : AimColumn.ALL) {
                double value = aim == null ? Double.NaN : column.value().applyAsDouble(aim);
                text.append(',').append(Double.isNaN(value) ? "" : fixed(column.key(), value));
            }
            text.append(',')
                    .append(
                            point.isSolved()
                                    ? words(point.getTarget().limits().stream()
                                            .map(TargetLimit::key)
                                            .toList())
                                    : "");
            text.append(',')
                    .append(
                            point.isSolved()
                                    ? words(point.getTarget().caveats().stream()
                                            .map(caveat -> caveat.name().toLowerCase(Locale.ROOT))
                                            .toList())
                                    : "");
            text.append('\n');
        }
        return text.toString();
    }

    private static String words(List<String> words) {
        return String.join(" ", words);
    }

    private static String quoted(String text) {
        return '"' + text.replace("\"", "\"\"") + '"';
    }

    private static String fixed(String key, double value) {
        return BigDecimal.valueOf(value)
                .setScale(FixedDecimals.of(key), RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    private static String knots(double metresPerSecond, int decimals) {
        return decimal(Units.toKnots(metresPerSecond), decimals);
    }

    private static String degrees(double radians, int decimals) {
        return decimal(Units.toDegrees(radians), decimals);
    }

    /** Rounded, without a minus before a zero. */
    private static String decimal(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
