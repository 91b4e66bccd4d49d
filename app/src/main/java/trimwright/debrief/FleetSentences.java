package trimwright.debrief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trimwright.fleet.Difference;
import trimwright.fleet.FleetFindings;
import trimwright.fleet.Question;
import trimwright.text.Texts;
import trimwright.units.Units;

/** What boats did otherwise, a sentence for each boat and point of sail of which something is told, the surest first. */
final class FleetSentences {
    /** Less than this (kn) is not worth telling of a model; chosen, a tenth is what a display shows. */
    private static final double LITTLE = 0.1;

    private FleetSentences() {}

    /**
     * One finding.
     *
     * @param told what stands, speed before trim
     * @param sentence the same in words
     * @param model what the model makes of her trim, null where it says nothing
     */
    record Finding(
            List<Difference> told,
            String sentence,
            @Nullable TheirTrim model) {
        Difference first() {
            return told.get(0);
        }
    }

    static List<Finding> of(DebriefReport report) {
        FleetFindings findings = report.fleet();
        List<Finding> found = new ArrayList<>();
        for (List<Difference> together : findings.toldTogether()) {
            Difference surest = together.get(0);
            List<Difference> same = together.stream()
                    .sorted(Comparator.comparing(one -> one.question().family()))
                    .toList();
            Difference progress = progress(findings, surest);
            TheirTrim model = report.theirs().stream()
                    .filter(one -> one.boat().equals(surest.boat()) && one.on() == surest.on())
                    .findFirst()
                    .orElse(null);
            String data = sentence(same, progress);
            found.add(new Finding(same, model == null ? data : data + " " + modelled(model, progress), model));
        }
        return found;
    }

    /** What the model makes of her trim, and whether the data say otherwise. */
    private static String modelled(TheirTrim model, @Nullable Difference progress) {
        double knots = Units.toKnots(model.made());
        String with = model.with().stream()
                .map(question -> Texts.of("debrief.found.with." + DebriefJson.word(question)))
                .collect(Collectors.joining(Texts.of("debrief.found.and")));
        String said = Math.abs(knots) < LITTLE
                ? Texts.of("debrief.found.model_little", with, LITTLE)
                : Texts.of("debrief.found.model", with, knots);
        if (progress == null || !progress.isTold()) {
            return said + " " + Texts.of("debrief.found.cannot_tell");
        }
        boolean outside = knots < Units.toKnots(progress.low()) || knots > Units.toKnots(progress.high());
        return said + " " + Texts.of(outside ? "debrief.found.disagree" : "debrief.found.agree");
    }

    /** What is said where nothing is told; with how small a difference of progress would have shown, where any was asked. */
    static String nothing(FleetFindings findings) {
        double[] halves = findings.differences().stream()
                .filter(one -> one.question() == Question.PROGRESS)
                .mapToDouble(one -> (one.high() - one.low()) / 2)
                .sorted()
                .toArray();
        return halves.length == 0
                ? Texts.of("debrief.found.too_little")
                : Texts.of("debrief.found.nothing", Units.toKnots(halves[halves.length / 2]));
    }

    private static @Nullable Difference progress(FleetFindings findings, Difference of) {
        return findings.differences().stream()
                .filter(one ->
                        one.question() == Question.PROGRESS && one.boat().equals(of.boat()) && one.on() == of.on())
                .findFirst()
                .orElse(null);
    }

    private static String sentence(List<Difference> told, @Nullable Difference progress) {
        Difference of = told.get(0);
        String said = told.stream().map(FleetSentences::clause).collect(Collectors.joining("; "));
        String text = head(told, progress) + " " + Texts.of("debrief.found.boat", of.boat(), said);
        if (progress == null || progress.isTold()) {
            return text + ".";
        }
        return text + "; "
                + Texts.of(
                        "debrief.found.progress_open",
                        Units.toKnots(progress.value()),
                        Units.toKnots(progress.low()),
                        Units.toKnots(progress.high()))
                + ".";
    }

    private static String head(List<Difference> told, @Nullable Difference progress) {
        String way =
                Texts.of("debrief.found.way." + DebriefJson.word(told.get(0).on()));
        Difference.Evidence evidence = told.stream()
                .map(Difference::evidence)
                .filter(one -> one.lowWind() != null)
                .findFirst()
                .orElse(progress == null ? told.get(0).evidence() : progress.evidence());
        Double low = evidence.lowWind();
        Double high = evidence.highWind();
        if (low == null || high == null) {
            return way + ":";
        }
        return Texts.of("debrief.found.head", way, Units.toKnots(low), Units.toKnots(high), evidence.seconds() / 60);
    }

    private static String clause(Difference one) {
        boolean more = one.value() > 0;
        double factor = unit(one.question());
        double low = more ? one.low() : -one.high();
        double high = more ? one.high() : -one.low();
        String key = "debrief.found." + one.question().name().toLowerCase(Locale.ROOT) + (more ? ".more" : ".less");
        return Texts.of(key, factor * Math.abs(one.value()), factor * low, factor * high);
    }

    /** From SI to what people read. */
    static double unit(Question question) {
        return switch (question) {
            case PROGRESS -> Units.toKnots(1);
            case TURN, RIDE_HEIGHT, SHEET_LOAD -> 1;
            case ANGLE, CAMBER, TWIST, INCIDENCE, HEEL, HEEL_SWING -> Units.toDegrees(1);
        };
    }

    /** Suffix of keys in files. */
    static String suffix(Question question) {
        return switch (question) {
            case PROGRESS -> "_kn";
            case TURN, RIDE_HEIGHT -> "_m";
            case SHEET_LOAD -> "_n";
            case ANGLE, CAMBER, TWIST, INCIDENCE, HEEL, HEEL_SWING -> "_deg";
        };
    }
}
