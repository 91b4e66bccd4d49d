package trimwright.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.calibration.Correction;
import trimwright.course.Course;
import trimwright.learned.LearnedTargets;
import trimwright.plans.KeptPlan;
import trimwright.prepare.ModelFingerprint;
import trimwright.prepare.SectionSource;
import trimwright.sensors.CalibrationDocument;
import trimwright.store.SessionInfo;
import trimwright.store.SessionJson;
import trimwright.text.JsonOut;
import trimwright.wind.WindOptions;

/**
 * What is to be debriefed, and how.
 *
 * @param boat file that describes the boats, or null
 * @param wing whose targets they are held against, or null
 * @param course given instead of that of the session, or null
 * @param section where the flow about the wing's sections comes from
 * @param plans that turns are held against
 * @param calibration document of the one in force, or null
 * @param learned what a season says of the boat with that wing, or null: then the model's targets are taken
 */
public record DebriefRequest(
        SessionInfo session,
        @Nullable BoatFile boat,
        @Nullable WingSpec wing,
        @Nullable Course course,
        WindOptions wind,
        SectionSource section,
        List<KeptPlan> plans,
        @Nullable String calibration,
        @Nullable LearnedTargets learned) {
    public DebriefRequest {
        plans = List.copyOf(plans);
    }

    /** Held against the model's targets. */
    public DebriefRequest(
            SessionInfo session,
            @Nullable BoatFile boat,
            @Nullable WingSpec wing,
            @Nullable Course course,
            WindOptions wind,
            SectionSource section,
            List<KeptPlan> plans) {
        this(session, boat, wing, course, wind, section, plans, null, null);
    }

    /** With sections in closed form and no plans. */
    public DebriefRequest(
            SessionInfo session,
            @Nullable BoatFile boat,
            @Nullable WingSpec wing,
            @Nullable Course course,
            WindOptions wind) {
        this(session, boat, wing, course, wind, SectionSource.CLOSED_FORM, List.of(), null, null);
    }

    /** What the calibration in force takes off. */
    public List<Correction> corrections() {
        return CalibrationDocument.corrections(calibration);
    }

    /**
     * All that the debrief depends on, the program among it: equal texts mean equal debriefs. Null where the program
     * cannot tell which program it is.
     */
    public @Nullable String inputs() {
        String program = ModelFingerprint.ofProgram();
        if (program == null) {
            return null;
        }
        ObjectNode inputs = JsonOut.document("debrief-inputs/1");
        inputs.put("program", program);
        inputs.set("session", SessionJson.document(session));
        inputs.put("boat", boat == null ? null : boat.text());
        inputs.put("wing", wing == null ? null : wing.id());
        inputs.put("course", course == null ? null : course.toString());
        inputs.put("wind", wind.toString());
        inputs.put("section", section.key());
        inputs.put("calibration", calibration);
        ArrayNode kept = inputs.putArray("plans");
        plans.forEach(plan -> kept.add(plan.name()).add(plan.text()));
        inputs.put("learned", learned == null ? null : learned.toString());
        return JsonOut.text(inputs);
    }
}
