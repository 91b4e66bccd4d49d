package trimwright.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.calibration.Correction;
import trimwright.compare.Comparison;
import trimwright.compare.Interval;
import trimwright.compare.LegLedger;
import trimwright.compare.PhaseResult;
import trimwright.course.Course;
import trimwright.plans.KeptPlan;
import trimwright.prepare.SectionSource;
import trimwright.segment.FoilingRule;
import trimwright.segment.Leg;
import trimwright.segment.OffFoil;
import trimwright.segment.OnCourse;
import trimwright.segment.Phase;
import trimwright.segment.SailedCourse;
import trimwright.segment.SideChange;
import trimwright.segment.Span;
import trimwright.segment.Tack;
import trimwright.segment.Turn;
import trimwright.segment.TurnLabel;
import trimwright.sensors.CalibrationText;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.track.ChannelSummary;
import trimwright.track.Quality;
import trimwright.units.Units;
import trimwright.wind.Quantity;
import trimwright.wind.SessionClock;
import trimwright.wind.SpeedSource;
import trimwright.wind.WindCorrection;
import trimwright.wind.WindTrack;

/** Writes {@code debrief/1} (docs/formats.md). Times {@code start_s} count from the session's {@code start_utc}. */
public final class DebriefJson {
    public static final String SCHEMA = "debrief/1";

    private DebriefJson() {}

    /**
     * The document of a session's debrief.
     *
     * @param session its id
     * @param boat the boat file that describes the boats, or null
     * @param wing whose targets they were held against, or null
     * @param section where the flow about that wing's sections came from
     */
    public static ObjectNode document(
            String session,
            @Nullable BoatFile boat,
            @Nullable WingSpec wing,
            SectionSource section,
            DebriefReport report) {
        ObjectNode document = boat == null ? JsonOut.document(SCHEMA) : JsonOut.document(SCHEMA, boat.hash());
        document.put("session", session);
        document.put("wing", wing == null ? null : wing.id());
        if (boat != null) {
            document.put("foils", boat.boat().foils().id())
                    .put("crew_mass_kg", boat.boat().crew().mass());
        }
        document.put("section", wing == null ? null : section.key());
        write(report, document);
        return document;
    }

    /** Adds the debrief to a document that bears the schema already. */
    static void write(DebriefReport report, ObjectNode document) {
        SessionClock clock = report.clock();
        document.put("caution", Texts.of("debrief.caution"));
        document.put("start_utc", Instant.ofEpochSecond(0, clock.startNanos()).toString());
        document.put("duration_s", clock.seconds(clock.size() - 1));
        document.put("clock_hz", 1 / clock.step());
        Course course = report.course();
        document.set("course", course == null ? null : CourseJson.of(course, clock));
        ArrayNode boats = document.putArray("boats");
        report.boats().forEach(boat -> write(boat, report.plans(), boats.addObject()));
        document.set("fleet", FleetJson.of(report));
    }

    private static void write(BoatDebrief boat, List<KeptPlan> plans, ObjectNode node) {
        WindTrack wind = boat.wind();
        node.put("boat", boat.boat());
        node.put("reference", boat.comparison().reference());
        node.put("speed_source", word(wind.speedSource()));
        node.put("speed_reason", word(wind.speedReason()));
        node.put("true_wind", wind.speedSource() == SpeedSource.OVER_GROUND ? "over_ground" : "over_water");
        node.put("foiling_told_by", foiling(boat.foiling()));
        node.put("wind_smoothing_s", wind.noise().smoothingTime());
        node.put("wind_scatter_kn", Units.toKnots(Math.sqrt(wind.noise().scatter())));
        node.set("wind_sensor", sensor(wind.correction()));
        Correction calibration = boat.calibration();
        node.put("calibration", calibration == null ? null : CalibrationText.line(calibration));
        words(node.putArray("caveats"), wind.caveats());
        OnCourse on = boat.on();
        SailedCourse.Start start = on == null ? null : on.sailed().start();
        node.set("start", start == null ? null : CourseJson.start(start, wind, boat.startShare()));
        ArrayNode legs = node.putArray("legs");
        List<Leg> allLegs = boat.pieces().legs();
        for (int i = 0; i < allLegs.size(); i++) {
            leg(wind, i, allLegs.get(i), legs.addObject());
            if (on != null) {
                CourseJson.leg(on, boat.comparison().ledgers().get(i), wind, (ObjectNode) legs.get(i));
            }
        }
        boat.aims().forEach(aim -> LegAimText.write(aim, (ObjectNode) legs.get(aim.leg())));
        ArrayNode turns = node.putArray("turns");
        for (int i = 0; i < boat.pieces().turns().size(); i++) {
            turn(wind, boat, i, turns.addObject());
            ((ObjectNode) turns.get(i))
                    .set("plan", PlannedTurn.node(boat, boat.pieces().turns().get(i), plans));
        }
        ArrayNode phases = node.putArray("phases");
        for (int i = 0; i < boat.comparison().phases().size(); i++) {
            phase(wind, allLegs, i, boat.comparison().phases().get(i), phases.addObject());
        }
        ArrayNode spells = node.putArray("off_foil");
        for (OffFoil spell : boat.pieces().offFoil()) {
            time(wind, spell.span(), spells.addObject());
        }
        ledger(wind, boat.comparison(), node.putArray("ledger"));
        ArrayNode causes = node.putArray("causes");
        for (CauseLoss cause : CauseLoss.of(node)) {
            causes.addObject()
                    .put("cause", cause.cause())
                    .put("loss_s", cause.loss())
                    .put("error_s", cause.error())
                    .put("stands", Math.abs(cause.loss()) > cause.error());
        }
        ArrayNode channels = node.putObject("quality").putArray("channels");
        boat.quality().forEach(summary -> quality(summary, channels.addObject()));
    }

    private static @Nullable ObjectNode sensor(WindCorrection correction) {
        if (correction.isNone()) {
            return null;
        }
        WindCorrection.Errors errors = correction.errors();
        ObjectNode node = JsonOut.mapper().createObjectNode();
        node.put("askew_deg", Units.toDegrees(correction.angle()));
        node.put("askew_error_deg", Units.toDegrees(errors.angle()));
        node.put("upwash_deg", Units.toDegrees(correction.upwash().angle()));
        node.put("upwash_error_deg", Units.toDegrees(errors.upwash()));
        node.put("upwash_aws_kn", Units.toKnots(correction.upwash().speed()));
        node.put("speed_ratio", correction.factor());
        node.put("speed_ratio_error", errors.factor());
        return node;
    }

    private static void leg(WindTrack wind, int index, Leg leg, ObjectNode node) {
        node.put("leg", index + 1);
        node.put("kind", word(leg.kind()));
        time(wind, leg.span(), node);
        node.put("course_deg", Units.toDegrees(leg.course()));
        node.put("distance_m", leg.distance());
        for (Shown shown : ShownQuantities.OF_LEG) {
            meanAndSpread(wind, shown, leg.span(), Tack.STARBOARD, node);
        }
        vmg(wind, leg.span(), leg.kind().windwardSign(), node);
    }

    private static void turn(WindTrack wind, BoatDebrief boat, int index, ObjectNode node) {
        Turn turn = boat.pieces().turns().get(index);
        node.put("turn", index + 1);
        node.put("kind", word(turn.kind()));
        TurnLabel label = turn.label();
        node.put("label", label == null ? null : word(label));
        time(wind, turn.span(), node);
        node.put("touched_down", touchedDown(boat, turn.span()));
        node.put("entry_tack", word(turn.entryTack()));
        node.put("entry_speed_kn", Units.toKnots(turn.entrySpeed()));
        node.put("minimum_speed_kn", Units.toKnots(turn.minimumSpeed()));
        node.put("exit_speed_kn", Units.toKnots(turn.exitSpeed()));
        node.put("angle_deg", Units.toDegrees(turn.rates().angle()));
        node.put("mean_rate_deg_per_s", Units.toDegrees(turn.rates().mean()));
        node.put("greatest_rate_deg_per_s", Units.toDegrees(turn.rates().greatest()));
        TurnOverlay.put(node, wind, SideChange.of(wind, turn));
        Turn.Recovery recovery = BoatDebrief.recovery(turn);
        if (recovery == null) {
            node.putNull("lost_m").putNull("vmg_back_s").putNull("vmg_came_back");
        } else {
            node.put("lost_m", recovery.metresLost());
            node.put(
                    "vmg_back_s",
                    (recovery.until() - turn.span().from()) * wind.clock().step());
            node.put("vmg_came_back", recovery.isComplete());
        }
        number(
                node,
                "reference_reached_s",
                boat.comparison().secondsToReference().get(index));
    }

    /** Whether the hulls touched the water in the turn; null where that is not told. */
    static @Nullable Boolean touchedDown(BoatDebrief boat, Span turn) {
        if (boat.foiling() instanceof FoilingRule.NotTold) {
            return null;
        }
        return boat.pieces().offFoil().stream().anyMatch(spell -> spell.span().overlaps(turn));
    }

    private static void phase(WindTrack wind, List<Leg> legs, int index, PhaseResult result, ObjectNode node) {
        Phase phase = result.phase();
        node.put("phase", index + 1);
        node.put("leg", legOf(legs, phase));
        node.put("kind", word(phase.kind()));
        node.put("tack", word(phase.tack()));
        time(wind, phase.span(), node);
        for (Shown shown : ShownQuantities.OF_PHASE) {
            meanAndSpread(wind, shown, phase.span(), phase.tack(), node);
        }
        vmg(wind, phase.span(), phase.kind().windwardSign(), node);
        node.put("progress_kn", Units.toKnots(result.made()));
        number(node, "reference_kn", knots(result.wanted()));
        Interval difference = result.difference();
        number(node, "difference_kn", difference == null ? null : Units.toKnots(difference.mean()));
        number(node, "difference_low_kn", difference == null ? null : Units.toKnots(difference.low()));
        number(node, "difference_high_kn", difference == null ? null : Units.toKnots(difference.high()));
        number(node, "independent_samples", difference == null ? null : difference.independent());
        words(node.putArray("caveats"), result.caveats());
    }

    /** Number of the leg that the phase lies in, from 1. */
    static int legOf(List<Leg> legs, Phase phase) {
        for (int i = 0; i < legs.size(); i++) {
            if (legs.get(i).span().contains(phase.span().from())) {
                return i + 1;
            }
        }
        throw new IllegalStateException("a phase outside every leg");
    }

    private static void ledger(WindTrack wind, Comparison comparison, ArrayNode ledger) {
        for (int i = 0; i < comparison.ledgers().size(); i++) {
            LegLedger leg = comparison.ledgers().get(i);
            ObjectNode node = ledger.addObject();
            node.put("leg", i + 1);
            node.put("total_s", leg.total());
            ArrayNode lines = node.putArray("lines");
            for (LegLedger.Line line : leg.lines()) {
                ObjectNode one = lines.addObject();
                one.put("cause", word(line.cause())).put("loss_s", line.loss());
                one.put("least_s", line.least()).put("most_s", line.most());
                ArrayNode pieces = one.putArray("pieces");
                for (LegLedger.Piece piece : line.pieces()) {
                    ObjectNode stretch = pieces.addObject();
                    time(wind, piece.span(), stretch);
                    stretch.put("loss_s", piece.loss());
                }
            }
        }
    }

    private static void quality(ChannelSummary summary, ObjectNode node) {
        node.put("channel", summary.path());
        node.put("samples", summary.samples());
        node.put("rate_hz", summary.rate());
        node.put("coverage_ratio", summary.coverage());
        node.put("gaps", summary.gaps());
        node.put("longest_gap_s", summary.longestGap());
        for (Quality mark : Quality.values()) {
            if (mark != Quality.GOOD && mark != Quality.ABSENT) {
                node.put(word(mark), summary.count(mark));
            }
        }
    }

    private static void time(WindTrack wind, Span span, ObjectNode node) {
        node.put("start_s", wind.clock().seconds(span.from()));
        node.put("duration_s", span.length() * wind.clock().step());
    }

    private static void meanAndSpread(WindTrack wind, Shown shown, Span span, Tack tack, ObjectNode node) {
        if (wind.has(shown.quantity())) {
            number(node, shown.keyWithUnit(), shown.mean(wind, span, tack));
            number(
                    node,
                    shown.key() + "_sd"
                            + shown.keyWithUnit().substring(shown.key().length()),
                    shown.deviation(wind, span));
        }
    }

    /** Positive where progress is made on that leg, up or down the wind. */
    private static void vmg(WindTrack wind, Span span, int sign, ObjectNode node) {
        if (wind.has(Quantity.VMG)) {
            number(node, "vmg_kn", sign * Units.toKnots(wind.mean(Quantity.VMG, span.from(), span.to())));
        }
    }

    private static @Nullable Double knots(@Nullable Double value) {
        return value == null ? null : Units.toKnots(value);
    }

    private static void number(ObjectNode node, String key, @Nullable Double value) {
        if (value == null || value.isNaN()) {
            node.putNull(key);
        } else {
            node.put(key, value);
        }
    }

    private static @Nullable String foiling(FoilingRule rule) {
        if (rule instanceof FoilingRule.ByRideHeight) {
            return "ride_height";
        }
        return rule instanceof FoilingRule.BySpeed ? "speed" : null;
    }

    private static <E extends Enum<E>> void words(ArrayNode array, Collection<E> values) {
        values.stream().sorted(Comparator.naturalOrder()).forEach(value -> array.add(word(value)));
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
