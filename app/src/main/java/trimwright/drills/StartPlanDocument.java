package trimwright.drills;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trimwright.boatfile.BoatFile;
import trimwright.start.Held;
import trimwright.start.Spread;
import trimwright.start.StartPlan;
import trimwright.start.StartSetup;
import trimwright.start.StartTrial;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.units.Units;

/** The plan of a start as {@code start-plan/1}. */
public final class StartPlanDocument {
    private StartPlanDocument() {}

    public static ObjectNode of(BoatFile file, StartPlan plan, int boats) {
        StartSetup setup = plan.setup();
        ObjectNode document = JsonOut.document("start-plan/1", file.hash());
        document.put("boat", file.boat().name());
        document.put("wing", setup.wing().id());
        document.put("tws_kn", Units.toKnots(setup.wind()));
        document.put("course_twa_deg", Units.toDegrees(setup.angle()));
        document.put("turbulence_ratio", setup.intensity());
        document.put("target_kn", Units.toKnots(setup.target()));
        document.put("boats", boats);
        document.set("slowest_on_foils", held(plan.onFoils()));
        document.set("slowest_off_foils", held(plan.offFoils()));
        add(document.putArray("gathering"), plan.gathering());
        add(document.putArray("other_tack"), plan.otherTack());
        ArrayNode losing = document.putArray("losing");
        for (StartPlan.Losing way : plan.losing()) {
            ObjectNode node = losing.addObject();
            node.put("delay", way.delay().name().toLowerCase(Locale.ROOT));
            node.put("wanted_s", way.wanted());
            node.put("hold_s", way.hold());
            put(node, "lost", "s", way.lost());
            put(node, "regained", "s", way.regained());
            node.put("boat_speed_min_kn", Units.toKnots(way.least().middle()));
            node.put("across_m", way.across().middle());
            node.put("hull_touched_ratio", way.touched());
            node.put("capsized_ratio", way.capsized());
        }
        document.put("caution", Texts.of("startplan.caution"));
        return document;
    }

    private static void add(ArrayNode to, List<StartPlan.Gathering> gathering) {
        for (StartPlan.Gathering one : gathering) {
            ObjectNode node = to.addObject();
            node.set("from", held(one.from()));
            ArrayNode reached = node.putArray("reached");
            for (int i = 0; i < one.reached().size(); i++) {
                ObjectNode there = reached.addObject().put("distance_m", StartTrial.DISTANCES.get(i));
                put(there, "time", "s", one.reached().get(i));
            }
            put(node, "full_speed", "s", one.seconds());
            put(node, "full_speed", "m", one.metres());
            put(node, "full_speed_across", "m", one.across());
            node.put("hull_touched_ratio", one.touched());
            node.put("capsized_ratio", one.capsized());
        }
    }

    private static @Nullable ObjectNode held(@Nullable Held held) {
        if (held == null) {
            return null;
        }
        ObjectNode node = JsonOut.mapper().createObjectNode();
        node.put("power_ratio", held.power());
        node.put("boat_speed_kn", Units.toKnots(held.speed()));
        node.put("boat_speed_min_kn", Units.toKnots(held.least()));
        node.put("hull_touched_ratio", held.wet());
        return node;
    }

    /** Median, and what a tenth and nine tenths of the boats stay under; null where it is not reached. */
    private static void put(ObjectNode to, String name, String unit, Spread spread) {
        to.put(name + "_" + unit, spread.middle());
        to.put(name + "_low_" + unit, spread.low());
        to.put(name + "_high_" + unit, spread.high());
    }
}
