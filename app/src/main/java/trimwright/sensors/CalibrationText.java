package trimwright.sensors;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import trimwright.calibration.BlockWind;
import trimwright.calibration.Calibration;
import trimwright.calibration.Combination;
import trimwright.calibration.Correction;
import trimwright.calibration.Estimate;
import trimwright.calibration.Tie;
import trimwright.calibration.Unknown;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.units.Units;

/** A calibration in words. */
public final class CalibrationText {
    private static final String NONE = "-";

    private CalibrationText() {}

    public static String of(CalibrationRequest request, List<Calibration> answers) {
        StringBuilder text =
                new StringBuilder(Texts.of("calibrate.title", request.session().id())).append('\n');
        for (Calibration answer : answers) {
            if (answer instanceof Calibration.Found found) {
                write(found, text);
            } else if (answer instanceof Calibration.Refused refused) {
                text.append('\n').append(refusal(refused)).append('\n');
            }
        }
        return text.append('\n')
                .append(Texts.of("calibrate.caution"))
                .append('\n')
                .toString();
    }

    static String refusal(Calibration.Refused refused) {
        return Texts.of(
                "calibrate.refused." + CalibrationDocument.key(refused.reason()),
                refused.boat(),
                refused.port(),
                refused.starboard());
    }

    private static void write(Calibration.Found found, StringBuilder text) {
        text.append('\n').append(found.boat()).append('\n');
        TextTable table = new TextTable(Texts.of("calibrate.head"));
        for (Estimate estimate : found.estimates()) {
            table.row(List.of(
                    name(estimate.unknown()),
                    value(estimate.unknown(), estimate.value()),
                    error(estimate),
                    Texts.of("calibrate.verdict." + CalibrationDocument.key(estimate.verdict()))));
        }
        text.append(table.text());
        for (Tie tie : found.ties()) {
            text.append(Texts.of("calibrate.tie", name(tie.one()), name(tie.other()), tie.correlation()))
                    .append('\n');
        }
        for (Combination combination : found.together()) {
            text.append(Texts.of(
                            "calibrate.together",
                            combination.unknowns().stream()
                                    .map(CalibrationText::name)
                                    .collect(Collectors.joining(", ")),
                            Texts.of("calibrate.remedy." + CalibrationDocument.key(combination.remedy()))))
                    .append('\n');
        }
        text.append(tacks(found));
    }

    /** The wind on both tacks, before and after. */
    private static String tacks(Calibration.Found found) {
        TextTable table = new TextTable(Texts.of("calibrate.tacks"));
        for (boolean upwind : new boolean[] {true, false}) {
            for (int side = -1; side <= 1; side += 2) {
                List<BlockWind> winds = new ArrayList<>();
                for (BlockWind wind : found.winds()) {
                    if (wind.upwind() == upwind && wind.side() == side) {
                        winds.add(wind);
                    }
                }
                table.row(List.of(
                        Texts.of(upwind ? "calibrate.upwind" : "calibrate.downwind"),
                        Texts.of(side > 0 ? "calibrate.starboard" : "calibrate.port"),
                        mean(winds.stream().map(BlockWind::before).toList()),
                        mean(winds.stream().map(BlockWind::after).toList())));
            }
        }
        return table.text();
    }

    private static String mean(List<BlockWind.Wind> winds) {
        if (winds.isEmpty()) {
            return NONE;
        }
        double north = 0;
        double east = 0;
        double speed = 0;
        for (BlockWind.Wind wind : winds) {
            north += wind.speed() * StrictMath.cos(wind.from()) / winds.size();
            east += wind.speed() * StrictMath.sin(wind.from()) / winds.size();
            speed += wind.speed() / winds.size();
        }
        double from = (Units.toDegrees(StrictMath.atan2(east, north)) + 360) % 360;
        return String.format(Locale.ROOT, "%05.1f deg, %.1f kn", from, Units.toKnots(speed));
    }

    /** What is taken off a boat's channels, in one line. */
    public static String line(Correction correction) {
        String told = correction.told().stream()
                .map(one -> name(one.unknown()) + " " + value(one.unknown(), one.value()) + " (" + error(one) + ")")
                .collect(Collectors.joining(", "));
        return Texts.of("calibrate.in_force", told);
    }

    private static String name(Unknown unknown) {
        return Texts.of("calibrate.unknown." + CalibrationDocument.key(unknown));
    }

    private static String value(Unknown unknown, double value) {
        return unknown.isRatio()
                ? String.format(Locale.ROOT, "%+.1f %%", 100 * value)
                : String.format(Locale.ROOT, "%+.2f deg", Units.toDegrees(value));
    }

    private static String error(Estimate estimate) {
        return value(estimate.unknown(), estimate.standardError()).substring(1);
    }
}
