package trimwright.debrief;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.plans.KeptPlan;
import trimwright.segment.SideChange;
import trimwright.segment.Turn;
import trimwright.segment.TurnKind;
import trimwright.text.JsonOut;
import trimwright.units.Units;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * Turns of one kind laid over one another ({@code turns/1}): what each boat did from some seconds before to some after the instant at which
 * the apparent wind came to the other side; where it did not, after the middle of the swing.
 */
public final class TurnOverlay {
    /** Seconds shown before and after that instant; chosen: from the driver's word until speed is back. */
    static final double BEFORE = 12;

    static final double AFTER = 30;

    /** Time between two values (s), chosen. */
    private static final double STEP = 0.2;

    /** As the boat's hand feels it: what was positive before the turn is positive, and negative after. */
    private static final List<Row> ROWS = List.of(
            new Row("boat_speed_kn", Quantity.SPEED, Units.toKnots(1), Row.Sign.AS_IT_STANDS),
            new Row("turn_rate_deg_per_s", Quantity.RATE_OF_TURN, Units.toDegrees(1), Row.Sign.SIZE),
            new Row("ride_height_m", Quantity.RIDE_HEIGHT, 1, Row.Sign.AS_IT_STANDS),
            new Row("heel_deg", Quantity.ROLL, Units.toDegrees(1), Row.Sign.OF_ENTRY),
            new Row("awa_deg", Quantity.AWA, Units.toDegrees(1), Row.Sign.OF_ENTRY),
            new Row("camber_deg", Quantity.CAMBER, Units.toDegrees(1), Row.Sign.OF_ENTRY),
            new Row("sheet_deg", Quantity.SHEET, Units.toDegrees(1), Row.Sign.OF_ENTRY));

    private TurnOverlay() {}

    private record Row(String key, Quantity quantity, double unit, Sign sign) {
        enum Sign {
            AS_IT_STANDS,
            SIZE,
            OF_ENTRY
        }

        double shown(double value, int entry) {
            return switch (sign) {
                case AS_IT_STANDS -> unit * value;
                case SIZE -> unit * Math.abs(value);
                case OF_ENTRY -> unit * value * entry;
            };
        }
    }

    /** All turns of that kind of all boats, boat by boat. */
    public static ObjectNode of(DebriefReport report, TurnKind kind) {
        ObjectNode document = JsonOut.document("turns/1");
        document.put("kind", DebriefJson.word(kind));
        document.put("before_s", BEFORE).put("step_s", STEP);
        ArrayNode rows = document.putArray("rows");
        ROWS.forEach(row -> rows.add(row.key()));
        ArrayNode turns = document.putArray("turns");
        for (BoatDebrief boat : report.boats()) {
            List<Turn> all = boat.pieces().turns();
            for (int i = 0; i < all.size(); i++) {
                if (all.get(i).kind() == kind) {
                    turn(boat, i, report.plans(), turns.addObject());
                }
            }
        }
        return document;
    }

    private static void turn(BoatDebrief boat, int index, List<KeptPlan> plans, ObjectNode node) {
        WindTrack track = boat.wind();
        Turn turn = boat.pieces().turns().get(index);
        SideChange change = SideChange.of(track, turn);
        int middle = change == null ? (turn.span().from() + turn.span().to()) / 2 : change.wind();
        double step = track.clock().step();
        node.put("boat", boat.boat()).put("turn", index + 1);
        node.put("at_s", middle * step);
        node.put("start_s", turn.span().from() * step);
        node.put("duration_s", turn.span().length() * step);
        put(node, track, change);
        Turn.Recovery recovery = BoatDebrief.recovery(turn);
        node.put("lost_m", recovery == null ? null : recovery.metresLost());
        node.put("touched_down", DebriefJson.touchedDown(boat, turn.span()));
        node.set("plan", PlannedTurn.node(boat, turn, plans));
        ObjectNode values = node.putObject("values");
        for (Row row : ROWS) {
            if (track.has(row.quantity())) {
                values(
                        values.putArray(row.key()),
                        track,
                        row,
                        middle,
                        turn.entryTack().sign());
            }
        }
    }

    /** When wind and camber came over, as both documents tell it. */
    static void put(ObjectNode node, WindTrack track, @Nullable SideChange change) {
        double step = track.clock().step();
        node.put("wind_over_s", change == null ? null : change.wind() * step);
        node.put("wind_over", change == null ? null : DebriefJson.word(change.over()));
        Integer camber = change == null ? null : change.camber();
        node.put("camber_after_wind_s", camber == null || change == null ? null : (camber - change.wind()) * step);
    }

    private static void values(ArrayNode array, WindTrack track, Row row, int middle, int entry) {
        double step = track.clock().step();
        for (double t = -BEFORE; t <= AFTER + 1e-9; t += STEP) {
            int from = middle + (int) Math.round(t / step);
            int to = Math.max(from + 1, middle + (int) Math.round((t + STEP) / step));
            boolean inside = from >= 0 && to <= track.size();
            double mean = inside ? track.mean(row.quantity(), from, to) : Double.NaN;
            double value = row.shown(mean, entry);
            if (Double.isNaN(value)) {
                array.addNull();
            } else {
                array.add(Math.rint(100 * value) / 100);
            }
        }
    }
}
