package trimwright.debrief;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.compare.Cause;
import trimwright.compare.Comparison;
import trimwright.compare.LegLedger;
import trimwright.compare.TargetReference;
import trimwright.raceday.LongLegs;
import trimwright.segment.Cutting;
import trimwright.segment.FoilingRule;
import trimwright.segment.Leg;
import trimwright.segment.OnCourse;
import trimwright.segment.Phase;
import trimwright.segment.Pieces;
import trimwright.segment.PointOfSail;
import trimwright.segment.Span;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.track.BoatTrack;
import trimwright.units.Angles;
import trimwright.units.Units;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.WindCorrection;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/** Long legs up and down the wind, one session, cut at fixed times into legs of two minutes with their true losses. */
final class TwinLegs {
    /** Two minutes: about what a leg of the invented regatta takes. The first begins when all have gathered speed. */
    private static final double LENGTH = 120;

    private static final double FIRST = 120;

    /** Of a phase that a cut went through, less is left out (s). */
    private static final double LEAST = 2;

    /** Begin of what is judged each way (s). */
    static final int FROM = (int) FIRST;

    /** End of what is judged of so many legs each way (s). */
    static int to(int legs) {
        return (int) (FIRST + legs * LENGTH);
    }

    private final Path folder;
    private final TargetBook book;
    private final int eachWay;
    private final SimulatedDay.Logged logged;
    private final SessionClock clock;
    private final List<Debrief.Cut> cuts;

    /**
     * @param folder one in it for each way
     * @param eachWay legs
     * @param corrections of the boats' wind sensors, as the race of the day told them
     */
    TwinLegs(Path folder, TargetBook book, int eachWay, Map<String, WindCorrection> corrections) throws IOException {
        this.folder = folder;
        this.book = book;
        this.eachWay = eachWay;
        logged = SimulatedDay.read(
                Arrays.stream(LongLegs.Way.values()).map(way -> of(folder, way)).toList());
        List<BoatTrack> tracks = logged.tracks();
        clock = SessionClock.covering(
                tracks.stream().mapToLong(BoatTrack::startNanos).min().orElseThrow(),
                tracks.stream().mapToLong(BoatTrack::endNanos).max().orElseThrow(),
                SailedWind.rateOf(tracks.get(0)));
        List<WindTrack> winds = tracks.stream()
                .map(track -> SailedWind.of(
                        track,
                        clock,
                        SimulatedDay.BOAT.boat(),
                        WindOptions.DEFAULT,
                        corrections.getOrDefault(track.boat(), WindCorrection.NONE)))
                .toList();
        List<@Nullable OnCourse> courses = FleetOnCourse.of(winds, options());
        cuts = new ArrayList<>();
        for (int i = 0; i < winds.size(); i++) {
            cuts.add(cut(winds.get(i), courses.get(i)));
        }
    }

    private DebriefOptions options() {
        return new DebriefOptions(SimulatedDay.BOAT.boat(), book, logged.course(), WindOptions.DEFAULT);
    }

    static Path of(Path folder, LongLegs.Way way) {
        return folder.resolve(way.name().toLowerCase(Locale.ROOT));
    }

    /**
     * A leg.
     *
     * @param boat its place among the boats
     * @param from its begin (s)
     * @param lines seconds by cause, as the debrief has them
     * @param total as the debrief has it (s)
     * @param trueLoss seconds lost on the targets in the wind that truly blew, without wakes
     */
    record Judged(int boat, LongLegs.Way way, double from, Map<Cause, Double> lines, double total, double trueLoss) {
        boolean has(double time) {
            return time >= from && time < from + LENGTH;
        }
    }

    /** Boats in the order of the scenario, then by time. */
    List<Judged> judge() throws IOException {
        LossModel losses = LossModel.of(cuts, options());
        List<Judged> legs = new ArrayList<>();
        List<Debrief.Cut> sorted = cuts.stream()
                .sorted(Comparator.comparing(cut -> cut.wind().boat()))
                .toList();
        for (int boat = 0; boat < sorted.size(); boat++) {
            Debrief.Cut cut = sorted.get(boat);
            Comparison comparison = Comparison.of(cut.wind(), cut.pieces(), new TargetReference(book), losses.of(cut));
            for (LongLegs.Way way : LongLegs.Way.values()) {
                for (int i = 0; i < eachWay; i++) {
                    LegLedger ledger = comparison.ledgers().get(way.ordinal() * eachWay + i);
                    Map<Cause, Double> lines = new EnumMap<>(Cause.class);
                    ledger.lines().forEach(line -> lines.put(line.cause(), line.loss()));
                    double from = FIRST + i * LENGTH;
                    legs.add(new Judged(
                            boat,
                            way,
                            from,
                            lines,
                            ledger.total(),
                            trueLoss(cut.wind().boat(), from, way)));
                }
            }
        }
        return legs;
    }

    private Debrief.Cut cut(WindTrack wind, @Nullable OnCourse on) {
        double step = clock.step();
        // Without the course: that of the first long leg says nothing of the second.
        Pieces found = Cutting.of(wind, FoilingRule.ByRideHeight.DEFAULT);
        List<Leg> legs = new ArrayList<>();
        List<Phase> phases = new ArrayList<>();
        for (LongLegs.Way way : LongLegs.Way.values()) {
            PointOfSail kind = PointOfSail.valueOf(way.name());
            double zero = SimulatedDay.zero(logged.course(), clock) + way.begin() + FIRST;
            for (int i = 0; i < eachWay; i++) {
                Span span = new Span((int) Math.round((zero + i * LENGTH) / step), (int)
                        Math.round((zero + (i + 1) * LENGTH) / step));
                legs.add(new Leg(kind, span, 0, 0, null));
                found.phases().stream()
                        .filter(phase -> phase.span().overlaps(span)
                                && inside(phase.span(), span).length() >= LEAST / step)
                        .forEach(phase -> phases.add(new Phase(kind, inside(phase.span(), span), phase.tack())));
            }
        }
        Pieces pieces = new Pieces(legs, found.turns(), phases, found.offFoil());
        return new Debrief.Cut(wind, on, FoilingRule.ByRideHeight.DEFAULT, pieces);
    }

    private static Span inside(Span span, Span of) {
        return new Span(Math.max(of.from(), span.from()), Math.min(of.to(), span.to()));
    }

    private double trueLoss(String boat, double from, LongLegs.Way way) throws IOException {
        List<String[]> sailed = SimulatedDay.table(of(folder, way), boat, "seconds");
        double lost = 0;
        for (int i = 0; i < sailed.size(); i++) {
            String[] cells = sailed.get(i);
            double time = Double.parseDouble(cells[0]);
            if (time < from || time >= from + LENGTH) {
                continue;
            }
            double wind = Units.fromKnots(Double.parseDouble(cells[3]) + Double.parseDouble(cells[5]));
            Target target = (way == LongLegs.Way.UPWIND ? book.findUpwind(wind) : book.findDownwind(wind)).target();
            if (target == null) {
                throw new IllegalStateException("no target in " + wind + " m/s");
            }
            // The course lies to leeward of the bow by the leeway, which is free of the tack.
            double toBow = angle(cells[4], cells[7]);
            double leeway = Math.signum(angle(cells[4], cells[7])) * Units.fromDegrees(Double.parseDouble(cells[8]));
            double sign = way == LongLegs.Way.UPWIND ? 1 : -1;
            double made = sign * Units.fromKnots(Double.parseDouble(cells[6])) * Math.cos(toBow + leeway);
            lost += 1 - made / target.velocityMadeGood();
        }
        return lost;
    }

    private static double angle(String to, String from) {
        return Angles.signed(Units.fromDegrees(Double.parseDouble(to) - Double.parseDouble(from)));
    }
}
