package trimwright.sensors;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.calibration.BlockWind;
import trimwright.calibration.Calibration;
import trimwright.calibration.Combination;
import trimwright.calibration.Correction;
import trimwright.calibration.Estimate;
import trimwright.calibration.Tie;
import trimwright.calibration.Unknown;
import trimwright.calibration.UpwashBasis;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.units.Units;

/** {@code calibration/1}: what was found of each boat; what is accepted is the same document, read back. */
public final class CalibrationDocument {
    private CalibrationDocument() {}

    public static ObjectNode of(CalibrationRequest request, List<Calibration> answers) {
        BoatFile file = request.file();
        WingSpec wing = request.wing();
        ObjectNode document =
                file == null ? JsonOut.document("calibration/1") : JsonOut.document("calibration/1", file.hash());
        document.put("session", request.session().id());
        document.put("wing", wing == null ? null : wing.id());
        ArrayNode boats = document.putArray("boats");
        answers.forEach(answer -> write(answer, boats.addObject().put("boat", answer.boat())));
        return document.put("caution", Texts.of("calibrate.caution"));
    }

    private static void write(Calibration answer, ObjectNode node) {
        if (answer instanceof Calibration.Refused refused) {
            node.put("refused", key(refused.reason()));
            node.put("port_s", refused.port());
            node.put("starboard_s", refused.starboard());
        } else if (answer instanceof Calibration.Found found) {
            write(found, node);
        }
    }

    private static void write(Calibration.Found found, ObjectNode node) {
        ArrayNode estimates = node.putArray("estimates");
        for (Estimate estimate : found.estimates()) {
            boolean ratio = estimate.unknown().isRatio();
            String unit = ratio ? "_ratio" : "_deg";
            double one = ratio ? 1 : Units.toDegrees(1);
            estimates
                    .addObject()
                    .put("unknown", key(estimate.unknown()))
                    .put("value" + unit, estimate.value() * one)
                    .put("standard_error" + unit, estimate.standardError() * one)
                    .put("verdict", key(estimate.verdict()));
        }
        ArrayNode ties = node.putArray("correlations");
        for (Tie tie : found.ties()) {
            ties.addObject()
                    .put("one", key(tie.one()))
                    .put("other", key(tie.other()))
                    .put("correlation", tie.correlation())
                    .put("parted", tie.parted());
        }
        ArrayNode together = node.putArray("not_apart");
        for (Combination combination : found.together()) {
            ObjectNode one = together.addObject().put("remedy", key(combination.remedy()));
            ArrayNode unknowns = one.putArray("unknowns");
            combination.unknowns().forEach(unknown -> unknowns.add(key(unknown)));
        }
        upwash(found.upwash(), node.putObject("upwash"));
        node.put("leeway_pressure_ratio", found.leeway());
        ArrayNode winds = node.putArray("winds");
        for (BlockWind wind : found.winds()) {
            winds.addObject()
                    .put("start_s", wind.time())
                    .put("tack", wind.side() > 0 ? "starboard" : "port")
                    .put("upwind", wind.upwind())
                    .put("before_tws_kn", Units.toKnots(wind.before().speed()))
                    .put("before_twd_deg", Units.toDegrees(wind.before().from()))
                    .put("after_tws_kn", Units.toKnots(wind.after().speed()))
                    .put("after_twd_deg", Units.toDegrees(wind.after().from()));
        }
    }

    private static void upwash(UpwashBasis basis, ObjectNode node) {
        if (basis instanceof UpwashBasis.OfModel model) {
            node.put("by", "wing_model");
            node.put("model_deg", Units.toDegrees(model.typical()));
            node.put("by_attack_ratio", model.byAttack());
            node.put("by_camber_ratio", model.byCamber());
            node.put("by_twist_ratio", model.byTwist());
            node.put("misfit_deg", Units.toDegrees(model.misfit()));
        } else if (basis instanceof UpwashBasis.OfWindAlone wind) {
            node.put("by", "wind");
            node.put("aws_kn", Units.toKnots(wind.speed()));
        }
    }

    /** What a document that was accepted takes off: of each boat what is told. Nothing of null. */
    public static List<Correction> corrections(@Nullable String accepted) {
        List<Correction> corrections = new ArrayList<>();
        if (accepted != null) {
            for (JsonNode boat : JsonOut.read(accepted).path("boats")) {
                if (boat.has("estimates")) {
                    corrections.add(correction(boat));
                }
            }
        }
        return corrections;
    }

    private static Correction correction(JsonNode boat) {
        List<Estimate> told = new ArrayList<>();
        for (JsonNode node : boat.path("estimates")) {
            if (node.path("verdict").asText().equals(key(Estimate.Verdict.TOLD))) {
                Unknown unknown = Unknown.valueOf(node.path("unknown").asText().toUpperCase(Locale.ROOT));
                String unit = unknown.isRatio() ? "_ratio" : "_deg";
                double one = unknown.isRatio() ? 1 : Units.fromDegrees(1);
                told.add(new Estimate(
                        unknown,
                        node.path("value" + unit).asDouble() * one,
                        node.path("standard_error" + unit).asDouble() * one,
                        Estimate.Verdict.TOLD));
            }
        }
        JsonNode upwash = boat.path("upwash");
        UpwashBasis basis = upwash.path("by").asText().equals("wing_model")
                ? new UpwashBasis.OfModel(
                        Units.fromDegrees(upwash.path("model_deg").asDouble()),
                        upwash.path("by_attack_ratio").asDouble(),
                        upwash.path("by_camber_ratio").asDouble(),
                        upwash.path("by_twist_ratio").asDouble(),
                        Units.fromDegrees(upwash.path("misfit_deg").asDouble()))
                : new UpwashBasis.OfWindAlone(
                        Units.fromKnots(upwash.path("aws_kn").asDouble()));
        return new Correction(
                boat.path("boat").asText(),
                told,
                basis,
                boat.path("leeway_pressure_ratio").asDouble());
    }

    static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
