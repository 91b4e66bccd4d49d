package trimwright.debrief;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import trimwright.calibration.Correction;
import trimwright.compare.Cause;
import trimwright.compare.CompareCaveat;
import trimwright.compare.Interval;
import trimwright.compare.LegLedger;
import trimwright.compare.PhaseResult;
import trimwright.course.CourseLeg;
import trimwright.plans.KeptPlan;
import trimwright.segment.FoilingRule;
import trimwright.segment.Leg;
import trimwright.segment.OnCourse;
import trimwright.segment.Phase;
import trimwright.segment.SailedCourse;
import trimwright.segment.Span;
import trimwright.segment.Tack;
import trimwright.segment.Turn;
import trimwright.segment.TurnLabel;
import trimwright.sensors.CalibrationText;
import trimwright.store.UtcOffset;
import trimwright.text.TextTable;
import trimwright.text.Texts;
import trimwright.track.ChannelSummary;
import trimwright.units.Units;
import trimwright.wind.Quantity;
import trimwright.wind.SpeedSource;
import trimwright.wind.WindCaveat;
import trimwright.wind.WindCorrection;
import trimwright.wind.WindTrack;

/** The debrief for a terminal: compact tables, knots and degrees, what is doubtful said in words. */
public final class DebriefText {
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final String NONE = "-";
    private static final Pattern MINUS_ZERO = Pattern.compile("-0(\\.0+)?");

    /** A channel is listed among the doubtful ones below this share of its time (chosen). */
    private static final double WELL_COVERED = 0.98;

    /** Lines of the ledger under this (s) are left out of its row (chosen). */
    private static final double WORTH_SAYING = 0.5;

    private final BoatDebrief boat;
    private final List<KeptPlan> plans;
    private final WindTrack wind;

    private final UtcOffset offset;

    private DebriefText(BoatDebrief boat, List<KeptPlan> plans, UtcOffset offset) {
        this.plans = plans;
        this.boat = boat;
        this.offset = offset;
        this.wind = boat.wind();
    }

    /**
     * The text.
     *
     * @param title what is debriefed, the first line
     * @param offset of the times of day that are shown
     */
    public static String of(String title, DebriefReport report, UtcOffset offset) {
        StringBuilder text = new StringBuilder(title)
                .append('\n')
                .append(FleetText.of(report))
                .append(FleetText.found(report));
        for (BoatDebrief boat : report.boats()) {
            text.append('\n').append(new DebriefText(boat, report.plans(), offset).text());
        }
        return text.append('\n')
                .append(Texts.of("debrief.caution"))
                .append('\n')
                .toString();
    }

    private String text() {
        StringBuilder text = new StringBuilder(head());
        text.append(start());
        section(text, boat.on() == null ? "debrief.legs" : "debrief.legs_of_course", legs());
        section(text, "debrief.ledger", ledger());
        text.append(note()).append(spread());
        if (!boat.aims().isEmpty()) {
            section(text, "debrief.aims", LegAimText.table(boat.aims()));
            text.append(Texts.of("debrief.aims.note")).append('\n');
        }
        section(text, "debrief.turns", turns());
        text.append(planned());
        section(text, "debrief.phases", phases());
        section(text, "debrief.data", data());
        return text.toString();
    }

    private static void section(StringBuilder text, String key, TextTable table) {
        text.append('\n').append(Texts.of(key)).append('\n');
        text.append(table.isEmpty() ? Texts.of(key + ".none") + "\n" : table.text());
    }

    private String head() {
        StringBuilder head = new StringBuilder();
        head.append(Texts.of(
                        "debrief.boat",
                        boat.boat(),
                        time(0),
                        time(wind.size() - 1),
                        wind.clock().seconds(wind.size() - 1) / 60,
                        1 / wind.clock().step(),
                        Texts.of("debrief.offset." + DebriefJson.word(offset.from()), offset.name())))
                .append('\n');
        String against = boat.comparison().reference();
        head.append(Texts.of("debrief.reference." + against)).append('\n');
        boolean ground = wind.speedSource() == SpeedSource.OVER_GROUND;
        head.append(Texts.of(
                        ground ? "debrief.speed.over_ground" : "debrief.speed.through_water",
                        Texts.of("debrief.reason." + DebriefJson.word(wind.speedReason()))))
                .append('\n');
        head.append(Texts.of("debrief.smoothing", wind.noise().smoothingTime())).append('\n');
        WindCorrection sensor = wind.correction();
        if (!sensor.isNone()) {
            head.append(Texts.of(
                            "debrief.sensor",
                            Units.toDegrees(sensor.angle()),
                            Units.toDegrees(sensor.errors().angle()),
                            Units.toDegrees(sensor.upwash().angle()),
                            Units.toKnots(sensor.upwash().speed()),
                            Units.toDegrees(sensor.errors().upwash()),
                            sensor.factor(),
                            sensor.errors().factor()))
                    .append('\n');
        }
        Correction calibration = boat.calibration();
        if (calibration != null) {
            head.append(CalibrationText.line(calibration)).append('\n');
        }
        List<String> doubts = new ArrayList<>();
        for (WindCaveat caveat : wind.caveats()) {
            doubts.add(Texts.of("debrief.caveat." + DebriefJson.word(caveat)));
        }
        if (boat.foiling() instanceof FoilingRule.NotTold) {
            doubts.add(Texts.of("debrief.caveat.foiling_not_told"));
        } else if (boat.foiling() instanceof FoilingRule.BySpeed) {
            doubts.add(Texts.of("debrief.caveat.foiling_told_by_speed"));
        }
        doubts.forEach(doubt -> head.append("  - ").append(doubt).append('\n'));
        return head.toString();
    }

    private TextTable legs() {
        TextTable table = new TextTable(Texts.of("debrief.legs.head"));
        List<Leg> legs = boat.pieces().legs();
        for (int i = 0; i < legs.size(); i++) {
            Leg leg = legs.get(i);
            Span span = leg.span();
            double vmg = leg.kind().windwardSign() * Units.toKnots(wind.mean(Quantity.VMG, span.from(), span.to()));
            table.row(List.of(
                    Integer.toString(i + 1),
                    time(span.from()),
                    seconds(span),
                    Texts.of("debrief.kind." + DebriefJson.word(leg.kind())),
                    spread(ShownQuantities.TWS, span, Tack.STARBOARD, "%.1f+-%.1f"),
                    spread(ShownQuantities.TWD, span, Tack.STARBOARD, "%03.0f+-%.0f"),
                    mean(ShownQuantities.BOAT_SPEED, span, Tack.STARBOARD, "%.1f"),
                    number("%.1f", vmg),
                    number("%.0f", leg.distance())));
        }
        return table;
    }

    /** One row a leg: what was lost, then the lines from the worst on; small ones are left out. */
    private TextTable ledger() {
        TextTable table = new TextTable(Texts.of("debrief.ledger.head"));
        for (int i = 0; i < boat.comparison().ledgers().size(); i++) {
            LegLedger ledger = boat.comparison().ledgers().get(i);
            CourseLeg on = ledger.leg().on();
            String where = ledger.lines().stream()
                    .filter(line -> Math.abs(line.loss()) >= WORTH_SAYING)
                    .sorted(Comparator.comparingDouble(LegLedger.Line::loss).reversed())
                    .map(line -> Texts.of("debrief.cause." + DebriefJson.word(line.cause())) + " "
                            + number("%.1f", line.loss()))
                    .collect(Collectors.joining(", "));
            table.row(List.of(
                    Integer.toString(i + 1),
                    on == null
                            ? Texts.of("debrief.kind."
                                    + DebriefJson.word(ledger.leg().kind()))
                            : wayOf(on),
                    seconds(ledger.leg().span()),
                    number("%.1f", ledger.total() - ledger.lossOf(Cause.UNJUDGED)),
                    where.isEmpty() ? NONE : where));
        }
        return table;
    }

    /** How far a line moves when the ladder is climbed in other orders; nothing where it does not matter. */
    private String spread() {
        double most = boat.comparison().ledgers().stream()
                .flatMap(ledger -> ledger.lines().stream())
                .mapToDouble(line -> line.most() - line.least())
                .max()
                .orElse(0);
        return most < WORTH_SAYING ? "" : Texts.of("debrief.spread", most) + "\n";
    }

    /** What lines of a model's targets do not say. */
    private String note() {
        boolean byTargets = boat.comparison().reference().equals("target")
                && !boat.comparison().ledgers().isEmpty();
        return byTargets ? Texts.of("debrief.ledger_note") + "\n" : "";
    }

    private static String wayOf(CourseLeg leg) {
        return Texts.of("debrief.way", leg.from(), leg.to());
    }

    /** When the line was crossed, how fast at the gun. */
    private String start() {
        OnCourse on = boat.on();
        SailedCourse.Start start = on == null ? null : on.sailed().start();
        if (on == null || start == null) {
            return on == null ? "" : Texts.of("debrief.start.none") + "\n";
        }
        Double share = boat.startShare();
        String speed = number("%.1f", Units.toKnots(start.speed()));
        String of = share == null ? "" : Texts.of("debrief.start.share", 100 * share);
        return Texts.of(
                        start.isEarly() ? "debrief.start.early" : "debrief.start",
                        number("%.1f", start.crossed()),
                        number("%.0f", Math.abs(start.distance())),
                        speed,
                        of)
                + "\n";
    }

    private String planned() {
        StringBuilder text = new StringBuilder();
        List<Turn> turns = boat.pieces().turns();
        for (int i = 0; i < turns.size(); i++) {
            PlannedTurn planned = PlannedTurn.find(boat, turns.get(i), plans);
            if (planned != null) {
                text.append(Texts.of("debrief.plan.line", i + 1, planned.title(), planned.said()))
                        .append('\n');
            }
        }
        return text.toString();
    }

    private TextTable turns() {
        TextTable table = new TextTable(Texts.of("debrief.turns.head"));
        List<Turn> turns = boat.pieces().turns();
        for (int i = 0; i < turns.size(); i++) {
            Turn turn = turns.get(i);
            Turn.Recovery recovery = BoatDebrief.recovery(turn);
            TurnLabel label = turn.label();
            Double reached = boat.comparison().secondsToReference().get(i);
            String lost = recovery == null ? NONE : number("%.0f", recovery.metresLost());
            table.row(List.of(
                    Integer.toString(i + 1),
                    time(turn.span().from()),
                    Texts.of("debrief.kind." + DebriefJson.word(turn.kind())),
                    label == null ? NONE : Texts.of("debrief.label." + DebriefJson.word(label)),
                    Texts.of("debrief.tack." + DebriefJson.word(turn.entryTack())),
                    seconds(turn.span()),
                    number("%.0f", Units.toDegrees(Math.abs(turn.rates().angle()))),
                    number("%.0f", Units.toDegrees(turn.rates().greatest())),
                    number("%.1f", Units.toKnots(turn.entrySpeed())),
                    number("%.1f", Units.toKnots(turn.minimumSpeed())),
                    number("%.1f", Units.toKnots(turn.exitSpeed())),
                    recovery != null && !recovery.isComplete() ? ">" + lost : lost,
                    reached == null ? NONE : number("%.0f", reached)));
        }
        return table;
    }

    private TextTable phases() {
        TextTable table = new TextTable(Texts.of("debrief.phases.head"));
        List<PhaseResult> results = boat.comparison().phases();
        for (int i = 0; i < results.size(); i++) {
            PhaseResult result = results.get(i);
            Phase phase = result.phase();
            Span span = phase.span();
            Tack tack = phase.tack();
            table.row(List.of(
                    Integer.toString(i + 1),
                    Integer.toString(DebriefJson.legOf(boat.pieces().legs(), phase)),
                    time(span.from()),
                    seconds(span),
                    Texts.of("debrief.tack." + DebriefJson.word(tack)),
                    mean(ShownQuantities.TWS, span, tack, "%.1f"),
                    mean(ShownQuantities.TWA, span, tack, "%.0f"),
                    mean(ShownQuantities.AWA, span, tack, "%.0f"),
                    mean(ShownQuantities.BOAT_SPEED, span, tack, "%.1f"),
                    number("%.1f", Units.toKnots(result.made())),
                    against(result),
                    mean(ShownQuantities.HEEL, span, tack, "%.1f"),
                    mean(ShownQuantities.RIDE_HEIGHT, span, tack, "%.2f"),
                    mean(ShownQuantities.CAMBER, span, tack, "%.1f"),
                    mean(ShownQuantities.TWIST, span, tack, "%.1f"),
                    mean(ShownQuantities.SHEET, span, tack, "%.1f"),
                    mean(ShownQuantities.SHEET_LOAD, span, tack, "%.0f")));
        }
        return table;
    }

    private static String against(PhaseResult result) {
        Interval difference = result.difference();
        if (difference == null) {
            return NONE;
        }
        Set<CompareCaveat> caveats = new TreeSet<>(result.caveats());
        return String.format(
                Locale.ROOT,
                "%+.1f (%+.1f..%+.1f)%s",
                Units.toKnots(difference.mean()),
                Units.toKnots(difference.low()),
                Units.toKnots(difference.high()),
                caveats.isEmpty() ? "" : " ?");
    }

    /** Channels with something to say against them; the others are one number. */
    private TextTable data() {
        TextTable table = new TextTable(Texts.of("debrief.data.head"));
        for (ChannelSummary summary : boat.quality()) {
            String marks = summary.marked().entrySet().stream()
                    .map(entry -> entry.getValue() + " " + Texts.of("debrief.mark." + DebriefJson.word(entry.getKey())))
                    .collect(Collectors.joining(", "));
            if (summary.coverage() < WELL_COVERED || summary.gaps() > 0 || !marks.isEmpty()) {
                table.row(List.of(
                        summary.path(),
                        number("%.1f", summary.rate()),
                        number("%.0f", 100 * summary.coverage()),
                        Integer.toString(summary.gaps()),
                        number("%.0f", summary.longestGap()),
                        marks.isEmpty() ? NONE : marks));
            }
        }
        return table;
    }

    private String time(int i) {
        return TIME.format(Instant.ofEpochSecond(0, wind.clock().timeNanos(i)).plusSeconds(offset.seconds()));
    }

    private String seconds(Span span) {
        return number("%.0f", span.length() * wind.clock().step());
    }

    private String mean(Shown shown, Span span, Tack tack, String format) {
        return number(format, shown.mean(wind, span, tack));
    }

    private String spread(Shown shown, Span span, Tack tack, String format) {
        double mean = shown.mean(wind, span, tack);
        return Double.isNaN(mean) ? NONE : String.format(Locale.ROOT, format, mean, shown.deviation(wind, span));
    }

    private static String number(String format, double value) {
        if (Double.isNaN(value)) {
            return NONE;
        }
        String text = String.format(Locale.ROOT, format, value);
        return MINUS_ZERO.matcher(text).matches() ? text.substring(1) : text;
    }
}
