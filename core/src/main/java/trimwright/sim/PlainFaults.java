package trimwright.sim;

import java.util.ArrayList;
import java.util.List;

/** What gauges that do not work make of what they should say. */
final class PlainFaults {
    private final List<DockFaults.Plain> plain;

    PlainFaults(List<DockFaults.Plain> plain) {
        this.plain = plain;
    }

    List<DockReading> on(List<DockReading> readings) {
        List<DockReading> all = new ArrayList<>();
        for (DockReading reading : readings) {
            all.add(on(reading, readings.get(0)));
        }
        return all;
    }

    private DockReading on(DockReading now, DockReading first) {
        DockReading changed = now;
        for (DockFaults.Plain one : plain) {
            changed = with(changed, one.gauge(), value(changed, first, one));
            if (one.kind() == DockFaults.Kind.SWAPPED) {
                changed = with(changed, DockFaults.Gauge.TWIST, get(now, DockFaults.Gauge.CAMBER));
            }
        }
        return changed;
    }

    private static double value(DockReading now, DockReading first, DockFaults.Plain one) {
        double value = get(now, one.gauge());
        return switch (one.kind()) {
            case DEAD -> Double.NaN;
            case FROZEN -> get(first, one.gauge());
            case SIGN -> -value;
            case SWAPPED -> get(now, DockFaults.Gauge.TWIST);
            case OTHER_MOUNT -> value;
        };
    }

    private static double get(DockReading from, DockFaults.Gauge gauge) {
        Reading reading = from.reading();
        return switch (gauge) {
            case ROLL -> reading.attitude().roll();
            case PITCH -> reading.attitude().pitch();
            case HEADING -> reading.attitude().heading();
            case WIND -> reading.wind().angle();
            case CAMBER -> reading.wing().camber();
            case TWIST -> reading.wing().twist();
            case FLAP_MIDDLE -> from.flapMiddle();
            case SHEET -> reading.wing().sheet();
            case SHEET_LOAD -> reading.wing().sheetLoad();
        };
    }

    private static DockReading with(DockReading from, DockFaults.Gauge gauge, double value) {
        Reading reading = from.reading();
        Reading.Attitude attitude = reading.attitude();
        Reading.Wind wind = reading.wind();
        Reading.Wing wing = reading.wing();
        Reading.Attitude lies = new Reading.Attitude(
                gauge == DockFaults.Gauge.HEADING ? value : attitude.heading(),
                attitude.rateOfTurn(),
                gauge == DockFaults.Gauge.ROLL ? value : attitude.roll(),
                gauge == DockFaults.Gauge.PITCH ? value : attitude.pitch());
        // A wind sensor that is dead says nothing of the speed either.
        boolean dead = gauge == DockFaults.Gauge.WIND && Double.isNaN(value);
        Reading.Wind blows = new Reading.Wind(
                dead ? Double.NaN : wind.speed(), gauge == DockFaults.Gauge.WIND ? value : wind.angle());
        Reading.Wing stands = new Reading.Wing(
                gauge == DockFaults.Gauge.CAMBER ? value : wing.camber(),
                gauge == DockFaults.Gauge.TWIST ? value : wing.twist(),
                gauge == DockFaults.Gauge.SHEET ? value : wing.sheet(),
                gauge == DockFaults.Gauge.SHEET_LOAD ? value : wing.sheetLoad(),
                wing.rideHeight());
        return new DockReading(
                new Reading(reading.time(), reading.fix(), lies, blows, stands),
                gauge == DockFaults.Gauge.FLAP_MIDDLE ? value : from.flapMiddle());
    }
}
