package trimwright.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trimwright.learned.LearnedPlace;
import trimwright.target.Branch;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetLookup;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** What was learnt as a table: a line each for beating, reaching and running in each wind in which anything was sailed. */
public final class LearnedText {
    private static final double REACH = Units.fromDegrees(100);

    private LearnedText() {}

    /** @param model the book that is corrected */
    public static String of(Learned learned, TargetBook model) {
        TextTable table = new TextTable(Texts.of("learn.head"));
        for (double wind : learned.targets().winds()) {
            row(table, learned, wind, "learn.upwind", model.findBest(Branch.FOILING, TargetMode.UPWIND, wind));
            row(table, learned, wind, "learn.reaching", model.find(Branch.FOILING, wind, REACH));
            row(table, learned, wind, "learn.downwind", model.findBest(Branch.FOILING, TargetMode.DOWNWIND, wind));
        }
        double minutes =
                learned.sessions().stream().mapToDouble(Learned.Used::seconds).sum() / 60;
        long taught =
                learned.sessions().stream().filter(used -> used.seconds() > 0).count();
        String from = Texts.of("learn.from", minutes, taught, learned.sessions().size());
        return from + "\n" + (table.isEmpty() ? Texts.of("learn.nothing") + "\n" : table.text())
                + Texts.of("learn.meaning") + "\n";
    }

    private static void row(TextTable table, Learned learned, double wind, String kind, TargetLookup lookup) {
        TargetPoint point = lookup.point();
        Target target = lookup.target();
        if (point == null || target == null) {
            return;
        }
        LearnedPlace place = learned.targets().nearest(wind, point.trueWindAngle());
        if (place.seconds() == 0 && !place.isSupported()) {
            return;
        }
        double speed = Units.toKnots(target.boatSpeed());
        List<String> cells = new ArrayList<>(List.of(
                number(Units.toKnots(wind), 0),
                Texts.of(kind),
                number(Units.toDegrees(point.trueWindAngle()), 0),
                number(speed, 1)));
        if (place.isSupported()) {
            cells.add(number(speed * place.ratio(), 1));
            cells.add(Texts.of(
                    "learn.change", 100 * (place.ratio() - 1), 100 * (place.low() - 1), 100 * (place.high() - 1)));
        } else {
            cells.add(Texts.of("learn.model"));
            cells.add("-");
        }
        cells.add(number(place.seconds() / 60, 1));
        cells.add(Integer.toString(place.sessions()));
        table.row(cells);
    }

    private static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
