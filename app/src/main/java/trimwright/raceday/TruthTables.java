package trimwright.raceday;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import trimwright.crew.DoneTurn;
import trimwright.sim.BoatRun;
import trimwright.sim.TrueSpan;
import trimwright.sim.TrueState;
import trimwright.units.Units;

/** The truth about one boat as tables of text: each second, each span, each turn. Times count from the day's zero. */
final class TruthTables {
    private TruthTables() {}

    static String seconds(BoatRun run) {
        StringBuilder text =
                new StringBuilder("time_s,bow_north_m,bow_east_m,tws_kn,twd_deg,wake_loss_kn,boat_speed_kn,"
                        + "heading_deg,leeway_deg,roll_deg,ride_height_m,flying,sheet_deg,camber_deg,twist_deg,heeling_nm,leg,"
                        + "turning\n");
        for (TrueState s : run.truth()) {
            text.append(String.format(
                    Locale.ROOT,
                    "%.1f,%.2f,%.2f,%.3f,%.2f,%.3f,%.3f,%.2f,%.2f,%.2f,%.3f,%d,%.2f,%.2f,%.2f,%.0f,%d,%d\n",
                    s.time(),
                    s.bowNorth(),
                    s.bowEast(),
                    Units.toKnots(s.windSpeed()),
                    Math.toDegrees(s.windFrom()),
                    Units.toKnots(s.wakeLoss()),
                    Units.toKnots(s.speed()),
                    Math.toDegrees(s.heading()),
                    Math.toDegrees(s.leeway()),
                    Math.toDegrees(s.roll()),
                    s.rideHeight(),
                    s.flying(),
                    Math.toDegrees(s.sheet()),
                    Math.toDegrees(s.camber()),
                    Math.toDegrees(s.twist()),
                    s.heeling(),
                    s.leg(),
                    s.turning()));
        }
        return text.toString();
    }

    /** Straight sailing, turns, time off the foils: what was ordered and what was, in the order of their begins. */
    static String spans(BoatRun run) {
        StringBuilder text = new StringBuilder("start_s,end_s,what,kind,cause,leg,tack\n");
        Stream.concat(run.spans().stream(), run.turns().stream().map(turn -> turn(turn, run.passages())))
                .sorted(Comparator.comparingDouble(TrueSpan::start))
                .forEach(span -> text.append(String.format(
                        Locale.ROOT,
                        "%.2f,%.2f,%s,%s,%s,%d,%s\n",
                        span.start(),
                        span.end(),
                        span.what(),
                        span.kind(),
                        span.cause(),
                        span.leg(),
                        span.tack() > 0 ? "starboard" : "port")));
        return text.toString();
    }

    /** Crossing of the start and end of each leg. */
    static String passages(BoatRun run) {
        StringBuilder text = new StringBuilder("time_s,ends_leg\n");
        List<Double> times = run.passages();
        for (int i = 0; i < times.size(); i++) {
            text.append(String.format(Locale.ROOT, "%.2f,%d\n", times.get(i), i - 1));
        }
        return text.toString();
    }

    private static TrueSpan turn(DoneTurn turn, List<Double> passages) {
        int leg = (int) passages.stream()
                        .filter(time -> time <= turn.order().start())
                        .count()
                - 1;
        return new TrueSpan(
                turn.order().start(),
                turn.end(),
                "turn",
                turn.order().kind().name().toLowerCase(Locale.ROOT),
                turn.order().cause().name().toLowerCase(Locale.ROOT),
                leg,
                turn.order().toTack());
    }
}
