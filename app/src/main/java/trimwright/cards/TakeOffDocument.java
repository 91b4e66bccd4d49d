package trimwright.cards;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.card.LiftOff;
import trimwright.card.LullChoice;
import trimwright.card.TakeOffCard;
import trimwright.card.TakeOffPath;
import trimwright.card.TakeOffRow;
import trimwright.platform.FoilSet;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.TargetPoint;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.units.Units;

/** {@code takeoff/1}: foil or not, wind by wind. */
public final class TakeOffDocument {
    private TakeOffDocument() {}

    /** The document of a request's take-offs. */
    public static ObjectNode of(TakeOffRequest request, TakeOffRun.TakeOffs takeOffs) {
        ObjectNode document = JsonOut.document("takeoff/1", request.file().hash())
                .put("boat", request.file().boat().name())
                .put("wing", request.wing().id())
                .put("foils", request.file().boat().foils().id())
                .put("crew_mass_kg", request.file().boat().crew().mass());
        ArrayNode rows = document.putArray("rows");
        for (int i = 0; i < takeOffs.rows().size(); i++) {
            write(takeOffs.rows().get(i), takeOffs.ways().get(i), rows.addObject());
        }
        TakeOffCard.LastUp last = takeOffs.last();
        if (last != null) {
            ObjectNode node = document.putObject("stays_up_from").put("tws_kn", Units.toKnots(last.wind()));
            write(last.state(), node);
        }
        document.put("caution", Texts.of("takeoff.caution"));
        return document;
    }

    private static void write(TakeOffRow row, TakeOffRun.Ways ways, ObjectNode node) {
        node.put("tws_kn", Units.toKnots(row.wind()));
        write(row.foiling(), node.putArray("foiling_twa_deg"));
        write(row.byHerself(), node.putArray("takes_off_twa_deg"));
        write(row.doubtful(), node.putArray("take_off_not_known_twa_deg"));
        write(row.fromBeat(), "from_beat", node);
        write(row.fromRun(), "from_run", node);
        write(row.bothBoards(), "both_boards", node);
        ObjectNode upwind = node.putObject("upwind");
        write(row.upwind(), upwind);
        write(ways.upwind(), upwind);
        ObjectNode downwind = node.putObject("downwind");
        write(row.downwind(), downwind);
        write(ways.downwind(), downwind);
    }

    private static void write(List<Double> angles, ArrayNode array) {
        for (double angle : angles) {
            array.add(Units.toDegrees(angle));
        }
    }

    private static void write(@Nullable LiftOff lift, String name, ObjectNode node) {
        if (lift != null) {
            ObjectNode own = node.putObject(name);
            write(lift.state(), own);
            own.put("takes_off", lift.isUp()).put("boards_down", lift.foils() == FoilSet.BOTH_DOWN ? 2 : 1);
        }
    }

    private static void write(SailingState state, ObjectNode node) {
        node.put("twa_deg", Units.toDegrees(state.get(Variable.TRUE_WIND_ANGLE)))
                .put("boat_speed_kn", Units.toKnots(state.get(Variable.BOAT_SPEED)))
                .put("camber_deg", Units.toDegrees(state.get(Variable.CAMBER)))
                .put("twist_deg", Units.toDegrees(state.get(Variable.TWIST)))
                .put("sheet_deg", Units.toDegrees(state.get(Variable.SHEET)))
                .put("heel_deg", Units.toDegrees(state.get(Variable.HEEL)))
                .put("crew_place_m", state.get(Variable.CREW_PLACE))
                .put("main_rake_deg", Units.toDegrees(state.get(Variable.MAIN_RAKE)));
    }

    private static void write(TakeOffRow.Choice choice, ObjectNode node) {
        write(choice.onFoils(), "on_foils", node);
        write(choice.onHulls(), "on_hulls", node);
        if (!Double.isNaN(choice.gain())) {
            node.put("foiling_gains_kn", Units.toKnots(choice.gain()));
        }
    }

    private static void write(TakeOffRun.Way way, ObjectNode node) {
        if (node.get("on_hulls") instanceof ObjectNode hulls && !Double.isNaN(way.crewPlace())) {
            hulls.put("crew_place_m", way.crewPlace());
        }
        if (node.get("on_hulls") instanceof ObjectNode hulls && !Double.isNaN(way.bothBoards())) {
            hulls.put("both_boards_gain_kn", Units.toKnots(way.bothBoards()));
        }
        TakeOffPath path = way.path();
        if (path != null) {
            node.putObject("take_off")
                    .put("gather_twa_deg", Units.toDegrees(path.gatherAngle()))
                    .put("up_after_s", path.up().seconds())
                    .put("up_boat_speed_kn", Units.toKnots(path.up().speed()))
                    .put("camber_deg", Units.toDegrees(path.up().camber()))
                    .put("twist_deg", Units.toDegrees(path.up().twist()))
                    .put("sheet_deg", Units.toDegrees(path.up().sheet()))
                    .put("boards_down", 1)
                    .put("done_after_s", path.seconds())
                    .put("spent_m", path.metresSpent())
                    .put("pays_after_s", path.paysAfter());
        }
        LullChoice lull = way.lull();
        if (lull != null) {
            ObjectNode own = node.putObject("lull").put("tws_kn", Units.toKnots(lull.wind()));
            write(lull.staysUp(), "on_foils", own);
            write(lull.onHulls(), "on_hulls", own);
            own.put("settle", settle(lull)).put("settle_after_s", lull.settleAfter());
        }
    }

    /** In a word, as a number cannot say which kind of none it is. */
    private static String settle(LullChoice lull) {
        if (Double.isNaN(lull.settleAfter())) {
            return "not_known";
        }
        if (lull.settleAfter() == 0) {
            return "at_once";
        }
        return Double.isInfinite(lull.settleAfter()) ? "never" : "after";
    }

    private static void write(@Nullable TargetPoint point, String name, ObjectNode node) {
        if (point != null) {
            node.putObject(name)
                    .put("twa_deg", Units.toDegrees(point.trueWindAngle()))
                    .put("boat_speed_kn", Units.toKnots(point.getTarget().boatSpeed()))
                    .put("made_good_kn", Units.toKnots(point.getTarget().velocityMadeGood()))
                    .put(
                            "heel_deg",
                            Units.toDegrees(point.getTarget().attitude().heel()))
                    .put("camber_deg", Units.toDegrees(point.getTarget().trim().camber()))
                    .put("twist_deg", Units.toDegrees(point.getTarget().trim().twist()))
                    .put("sheet_deg", Units.toDegrees(point.getTarget().trim().sheet()))
                    .put("boards_down", 1);
        }
    }
}
