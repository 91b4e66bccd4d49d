package trimwright.motion;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Handling;
import trimwright.boat.SheetTackle;
import trimwright.units.Angles;

/**
 * How fast controls go. Sheet, camber and twist go as the boat file says; where it says nothing, and for all else, rates are of
 * the size that a reference of assumed figures gives for craft of this kind (ACTUATORS-ASSUMED in docs/sources.md): rake 3-6
 * deg/s, elevator and differential 4 deg/s, flap 8-10 deg/s, twist 5 deg/s, inversion of the camber 1.5-2.5 s, boards 3-5 s, crew
 * across 3-4 s, hauling 0.3 m/s of rope at most. Easing is let go, so faster: chosen.
 */
final class Actuators {
    private static final double RAKE = Math.toRadians(6);
    private static final double ELEVATOR = Math.toRadians(4);
    /** 25 degrees of camber from side to side in two seconds. */
    private static final double INVERSION = Math.toRadians(25);

    private static final double RUDDER = Math.toRadians(12);
    private static final double BOARD = 0.25;
    private static final double TWIST_SHARE = 0.1;
    private static final double CREW = 2.1;

    /** Where the boat file has no table of handling. */
    private static final Handling.ControlRates UNSAID = new Handling.ControlRates(
            Math.toRadians(40), /* sheetHaul= */ 0.3, /* camber= */ Math.toRadians(9), /* twist= */ Math.toRadians(5));

    private final SheetTackle tackle;
    private final Handling.ControlRates rates;

    /** @param handling of the boat file; null where it does not say */
    Actuators(SheetTackle tackle, @Nullable Handling handling) {
        this.tackle = tackle;
        rates = handling == null ? UNSAID : handling.rates();
    }

    /**
     * The controls after a step (s) toward the aim; turning moment of the wing as {@link MotionLoads} has it, power that there is for
     * the sheet (W).
     */
    Controls move(Controls from, Commands commands, double turningMoment, double power, double dt) {
        Controls aim = commands.aim();
        double flap = (commands.flap() == Commands.FlapWork.INVERT ? INVERSION : rates.camber()) * dt;
        double twist = (commands.flap() == Commands.FlapWork.INVERT ? INVERSION : rates.twist()) * dt;
        return new Controls(
                sheet(from.sheet(), aim.sheet(), turningMoment, power, dt),
                toward(from.camber(), aim.camber(), flap),
                toward(from.twist(), aim.twist(), twist),
                toward(from.twistMid(), aim.twistMid(), TWIST_SHARE * dt),
                toward(from.portRake(), aim.portRake(), RAKE * dt),
                toward(from.starboardRake(), aim.starboardRake(), RAKE * dt),
                toward(from.elevator(), aim.elevator(), ELEVATOR * dt),
                toward(from.differential(), aim.differential(), ELEVATOR * dt),
                toward(from.rudder(), aim.rudder(), RUDDER * dt),
                toward(from.portBoard(), aim.portBoard(), BOARD * dt),
                toward(from.starboardBoard(), aim.starboardBoard(), BOARD * dt),
                toward(from.crew(), aim.crew(), CREW * dt));
    }

    /** With the moment the sheet runs; against it the grinders' power sets the speed. A slack sheet does not run by itself. */
    private double sheet(double from, double aim, double turningMoment, double power, double dt) {
        double way = Angles.signed(aim - from);
        if (way * turningMoment >= 0) {
            return from + Math.copySign(Math.min(Math.abs(way), rates.sheetEase() * dt), way);
        }
        double load = Math.abs(turningMoment) / tackle.lever();
        double speed = Math.min(rates.sheetHaul(), power * tackle.efficiency() / Math.max(load, 1));
        return from + Math.copySign(Math.min(Math.abs(way), speed / tackle.lever() * dt), way);
    }

    /** Power that the grinders gave (W) for the sheet to go from one angle to another in a step (s); none for easing. */
    double grinding(double from, double to, double turningMoment, double dt) {
        double work = -Angles.signed(to - from) * turningMoment;
        return work > 0 ? work / tackle.efficiency() / dt : 0;
    }

    private static double toward(double from, double aim, double most) {
        return from + Math.max(-most, Math.min(most, aim - from));
    }
}
