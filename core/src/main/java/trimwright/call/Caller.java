package trimwright.call;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.live.LiveFigures;
import trimwright.live.LiveState;
import trimwright.live.Sensor;
import trimwright.live.SensorFault;
import trimwright.segment.Tack;
import trimwright.units.Units;

/**
 * Decides second by second whether a call is due: the moment at its aim first, then shape; a call speaks of means of 20 s
 * and of a loss that is above half a knot and two standard errors. Not thread-safe.
 */
public final class Caller {
    /** Without these nothing can be said. Camber and twist silence only what needs them. */
    private static final Set<Sensor> NEEDED = EnumSet.of(Sensor.WIND, Sensor.POSITION, Sensor.ATTITUDE);

    /** The band's ends cost this share of speed, by its definition (-). */
    private static final double BAND_COST = 0.005;

    /** Most degrees in one call (chosen): its effect shall show before the rest. */
    private static final int MOST_DEGREES = 5;

    /** Heel to leeward of its aim, mean of 20 s, from which nothing is asked that raises the moment (rad): chosen. */
    private static final double HELD = Math.toRadians(0.5);

    private static final long SECOND = 1_000_000_000L;

    private final CallRules rules;
    private final Averages averages = new Averages();
    private long nextNanos = Long.MIN_VALUE;
    private long calledNanos = Long.MIN_VALUE;
    private int inLeg;
    private @Nullable Tack tack;
    private boolean against;

    public Caller(CallRules rules) {
        this.rules = rules;
    }

    /** Takes the figures of now; null until another second has passed since the last answer. */
    public @Nullable CallAnswer step(LiveFigures figures, Tone tone, Around around) {
        long now = figures.timeNanos();
        if (now < nextNanos) {
            return null;
        }
        nextNanos = now + SECOND;
        countLegs(figures);
        Silence silence = mustBeStill(figures, around);
        if (silence != null) {
            averages.clear();
            return CallAnswer.of(silence);
        }
        averages.add(figures);
        if (!isJudged(figures)) {
            return CallAnswer.of(Silence.NO_TARGET);
        }
        if (tone == Tone.LIMIT) {
            return CallAnswer.of(Silence.LIMIT);
        }
        if (!averages.isFull()) {
            return CallAnswer.of(Silence.SETTLING);
        }
        if (calledNanos != Long.MIN_VALUE && now - calledNanos < rules.rest() * SECOND) {
            return CallAnswer.of(Silence.RESTING);
        }
        if (inLeg >= rules.mostInLeg()) {
            return CallAnswer.of(Silence.LEG_FULL);
        }
        Call call = due(now);
        if (call == null) {
            return CallAnswer.of(Silence.NOTHING_TO_SAY);
        }
        calledNanos = now;
        inLeg++;
        return CallAnswer.of(call);
    }

    /** A leg ends where she goes over to the other tack, or from against the wind to down it. */
    private void countLegs(LiveFigures figures) {
        Tack side = figures.wind().tack();
        double twa = figures.wind().twa();
        if (side == null || Double.isNaN(twa)) {
            return;
        }
        boolean up = Math.abs(twa) < Math.PI / 2;
        if (side != tack || up != against) {
            tack = side;
            against = up;
            inLeg = 0;
        }
    }

    private @Nullable Silence mustBeStill(LiveFigures figures, Around around) {
        LiveState state = figures.state();
        if (state == LiveState.EYES_OUT) {
            return Silence.TURNING;
        }
        for (SensorFault fault : figures.faults()) {
            if (NEEDED.contains(fault.sensor())) {
                return Silence.DATA;
            }
        }
        if (state == LiveState.NO_DATA) {
            return Silence.DATA;
        }
        if (state != LiveState.ON_FOILS) {
            return Silence.NOT_FLYING;
        }
        if (around.start() > 0 && around.start() <= rules.beforeStart()) {
            return Silence.START;
        }
        if (around.turn() <= rules.beforeTurn()) {
            return Silence.TURN_AHEAD;
        }
        if (around.boat() <= rules.traffic()) {
            return Silence.TRAFFIC;
        }
        if (around.boundary() <= rules.boundary()) {
            return Silence.BOUNDARY;
        }
        return null;
    }

    private static boolean isJudged(LiveFigures figures) {
        return !Double.isNaN(figures.aim().share().value())
                && !Double.isNaN(figures.aim().reachable().error());
    }

    private @Nullable Call due(long now) {
        double lost = averages.lost();
        double error = averages.lostError();
        boolean loses = lost >= rules.leastSpeed() && lost >= 2 * error;
        double moment = averages.moment();
        double aim = averages.momentAim();
        boolean measured = !Double.isNaN(moment) && !Double.isNaN(aim);
        if (measured) {
            double half = 2 * averages.momentError();
            if (moment - half > aim) {
                // Over the aim is too near the limit, whatever the speed.
                return new Call(now, CallKind.EASE, 0, lost, error, moment, aim, Double.NaN);
            }
            if (moment + half < aim) {
                return loses ? new Call(now, CallKind.POWER_UP, 0, lost, error, moment, aim, Double.NaN) : null;
            }
        }
        if (!loses) {
            return null;
        }
        boolean full = measured ? moment + 2 * averages.momentError() > aim : averages.heelOff() < -HELD;
        Call camber = shape(now, averages.camber(), CallKind.CAMBER_MORE, CallKind.CAMBER_LESS, full);
        Call twist = shape(now, averages.twist(), CallKind.TWIST_MORE, CallKind.TWIST_LESS, full);
        if (camber == null || twist == null) {
            return camber == null ? twist : camber;
        }
        return twist.promise() >= camber.promise() ? twist : camber;
    }

    private @Nullable Call shape(long now, Averages.Control control, CallKind more, CallKind less, boolean full) {
        if (!control.isKnown() || (control.value() >= control.low() && control.value() <= control.high())) {
            return null;
        }
        boolean under = control.value() < control.low();
        // Where a limit cuts the band off at one side, the other tells how flat the top is.
        double end = Math.max(control.aim() - control.low(), control.high() - control.aim());
        double off = Math.abs(control.value() - control.aim());
        // About the aim the loss grows with the square; no more can be won than is lost.
        double byBand = BAND_COST * averages.speed() * (off / end) * (off / end);
        double promise = Math.min(byBand, averages.lost());
        int degrees = (int) Math.min(MOST_DEGREES, Math.floor(Units.toDegrees(off)));
        CallKind kind = under ? more : less;
        if (!(promise >= rules.leastSpeed()) || degrees < 1 || (full && kind.raisesMoment())) {
            return null;
        }
        return new Call(
                now, kind, degrees, averages.lost(), averages.lostError(), control.value(), control.aim(), promise);
    }
}
