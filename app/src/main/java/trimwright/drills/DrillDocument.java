package trimwright.drills;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import trimwright.boatfile.BoatFile;
import trimwright.practice.DrillResult;
import trimwright.practice.DrillSetup;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.units.Units;
import trimwright.weather.WaveSpec;

/** A drill's result as {@code practice/1} and as text. */
public final class DrillDocument {
    private DrillDocument() {}

    /** @param hand who had the wing: a pilot's word, or {@code you} */
    public static ObjectNode of(BoatFile file, DrillSetup setup, String hand, DrillResult result) {
        ObjectNode document = JsonOut.document("practice/1", file.hash());
        document.put("boat", file.boat().name());
        document.put("wing", setup.wing().id());
        document.put("drill", DrillBoats.word(setup.drill()));
        document.put("pilot", hand);
        document.put("seed", setup.seed());
        document.put("tws_kn", Units.toKnots(setup.wind()));
        WaveSpec waves = setup.waves();
        if (waves != null) {
            document.putObject("waves")
                    .put("significant_height_m", waves.height())
                    .put("peak_period_s", waves.period());
        }
        document.put("seconds_s", result.seconds());
        document.put("lost_s", result.lost());
        document.put("end", result.end().name().toLowerCase(Locale.ROOT));
        document.put("mean_tws_kn", Units.toKnots(result.meanWind()));
        document.put("mean_boat_speed_kn", Units.toKnots(result.meanSpeed()));
        document.put("leeward_heel_max_deg", Math.toDegrees(result.mostHeel()));
        document.put("hull_touched_s", result.touched());
        document.put("slid_s", result.slid());
        ObjectNode over = document.putObject("over_limit_s");
        over.put("elevator_down_force", result.over().elevator());
        over.put("sheet_load", result.over().sheet());
        over.put("stall_margin", result.over().stall());
        ArrayNode turns = document.putArray("turns");
        for (DrillResult.Turned turn : result.turns()) {
            turns.addObject()
                    .put("word_s", turn.word())
                    .put("lost_m", turn.metres())
                    .put("boat_speed_min_kn", Units.toKnots(turn.leastSpeed()))
                    .put("hull_touched", turn.touched());
        }
        DrillResult.Started started = result.started();
        if (started != null) {
            document.putObject("start")
                    .put("late_s", started.late())
                    .put("line_m", started.metres())
                    .put("boat_speed_kn", Units.toKnots(started.speed()));
        }
        document.put("caution", Texts.of("practice.caution"));
        return document;
    }

    /** The same in words, a line each. */
    public static String text(DrillSetup setup, String hand, DrillResult result) {
        StringBuilder text = new StringBuilder();
        text.append(Texts.of(
                        "practice.title",
                        setup.boat().title(),
                        setup.wing().id(),
                        DrillBoats.word(setup.drill()),
                        Units.toKnots(setup.wind()),
                        hand))
                .append('\n');
        WaveSpec waves = setup.waves();
        if (waves != null) {
            text.append(Texts.of("practice.sea", waves.height(), waves.period()))
                    .append('\n');
        }
        if (result.end() != DrillResult.End.SAILED) {
            String key = result.end() == DrillResult.End.CAPSIZED ? "practice.capsized" : "practice.nose_dived";
            text.append(Texts.of(key, result.seconds())).append('\n');
        }
        text.append(Texts.of("practice.lost", result.lost(), result.seconds(), Units.toKnots(result.meanSpeed())))
                .append('\n');
        for (DrillResult.Turned turn : result.turns()) {
            text.append(Texts.of(
                            turn.touched() ? "practice.turn_wet" : "practice.turn_dry",
                            turn.word(),
                            turn.metres(),
                            Units.toKnots(turn.leastSpeed())))
                    .append('\n');
        }
        DrillResult.Started started = result.started();
        if (started != null) {
            String key = Double.isNaN(started.late()) ? "never" : started.late() < 0 ? "early" : "late";
            text.append(Texts.of(
                            "practice.start_" + key,
                            Math.abs(started.late()),
                            started.metres(),
                            Units.toKnots(started.speed())))
                    .append('\n');
        }
        text.append(Texts.of(
                        "practice.limits",
                        Math.toDegrees(result.mostHeel()),
                        result.touched(),
                        result.over().elevator(),
                        result.over().sheet(),
                        result.over().stall()))
                .append('\n');
        if (result.slid() > 0) {
            text.append(Texts.of("practice.slid", result.slid())).append('\n');
        }
        return text.append(Texts.of("practice.caution")).append('\n').toString();
    }
}
