package trimwright.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.live.Gauge;
import trimwright.live.LiveFigures;
import trimwright.live.SensorFault;
import trimwright.units.Units;

/** A boat's figures under the names of {@code live/1}, rounded so that noise nobody can read is no news. */
final class BoatKeys {
    private BoatKeys() {}

    static void put(String boat, LiveFigures figures, Map<String, Object> into) {
        Keys keys = new Keys("boat." + boat + ".", into);
        LiveFigures.Motion motion = figures.motion();
        LiveFigures.Wind wind = figures.wind();
        keys.text("state", figures.state().name().toLowerCase(Locale.ROOT));
        keys.text("tack", wind.tack() == null ? "" : wind.tack().name().toLowerCase(Locale.ROOT));
        keys.text(
                "speed_source",
                motion.source() == null ? "" : motion.source().name().toLowerCase(Locale.ROOT));
        keys.knots("speed_kn", motion.speed());
        keys.knots("vmg_kn", motion.vmg());
        keys.degrees("heading_deg", motion.heading(), 0);
        keys.degrees("heel_deg", motion.heel(), 1);
        keys.number("ride_height_m", motion.rideHeight(), 2);
        keys.knots("tws_kn", wind.tws());
        keys.degrees("twd_deg", wind.twd(), 0);
        keys.degrees("twa_deg", wind.twa(), 0);
        keys.knots("aws_kn", wind.aws());
        keys.degrees("awa_deg", wind.awa(), 0);
        keys.knots("target_kn", figures.aim().target());
        keys.knots("reachable_kn", figures.aim().reachable().value());
        keys.knots("reachable_low_kn", figures.aim().reachable().low());
        keys.knots("reachable_high_kn", figures.aim().reachable().high());
        keys.number("share_ratio", figures.aim().share().value(), 3);
        keys.number("share_low_ratio", figures.aim().share().low(), 3);
        keys.number("share_high_ratio", figures.aim().share().high(), 3);
        List<@Nullable Double> tail = new ArrayList<>();
        figures.aim().tail().forEach(share -> tail.add(rounded(share, 3)));
        into.put("boat." + boat + ".tail_ratio", tail);
        gauge(keys, "camber", figures.trim().camber());
        gauge(keys, "twist", figures.trim().twist());
        gauge(keys, "sheet", figures.trim().sheet());
        LiveFigures.Load load = figures.load();
        keys.number("heeling_moment_nm", load.moment().value(), 0);
        keys.number("moment_aim_nm", load.aim(), 0);
        keys.number("moment_limit_nm", load.limit(), 0);
        keys.number("turbulence_ratio", load.turbulence(), 3);
        List<String> faults = new ArrayList<>();
        for (SensorFault fault : figures.faults()) {
            faults.add(fault.sensor().name().toLowerCase(Locale.ROOT) + " "
                    + fault.kind().name().toLowerCase(Locale.ROOT) + " " + (long) fault.seconds());
        }
        into.put("boat." + boat + ".faults", faults);
    }

    private static void gauge(Keys keys, String name, Gauge gauge) {
        keys.degrees(name + "_deg", gauge.value(), 1);
        keys.degrees(name + "_low_deg", gauge.low(), 1);
        keys.degrees(name + "_aim_deg", gauge.aim(), 1);
        keys.degrees(name + "_high_deg", gauge.high(), 1);
    }

    private static @Nullable Double rounded(double value, int decimals) {
        double scale = decimals == 0 ? 1 : decimals == 1 ? 10 : decimals == 2 ? 100 : 1000;
        return Double.isFinite(value) ? (Double) (Math.rint(value * scale) / scale) : null;
    }

    /** Names with one beginning. */
    private record Keys(String before, Map<String, Object> into) {
        void text(String name, String text) {
            into.put(before + name, text);
        }

        void number(String name, double value, int decimals) {
            Double shown = rounded(value, decimals);
            // Null cannot stand in every kind of map; absent is what the protocol calls null.
            into.put(before + name, shown == null ? Absent.VALUE : shown);
        }

        void knots(String name, double value) {
            number(name, Units.toKnots(value), 1);
        }

        void degrees(String name, double value, int decimals) {
            number(name, Units.toDegrees(value), decimals);
        }
    }
}
