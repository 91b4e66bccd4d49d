package trimwright.sim;

import trimwright.chance.RandomStream;
import trimwright.units.Angles;

/**
 * One boat's instruments: from what is to what they say. Noise is common to all boats (sizes chosen, as of good sports
 * instruments); offsets, factors, lag and upwash are the boat's own. Quantisation comes with the decimals of the files.
 */
final class Instruments {
    private static final double WIND_ANGLE_NOISE = Math.toRadians(0.6);
    private static final double WIND_SPEED_NOISE = 0.15;
    private static final double HEADING_NOISE = Math.toRadians(0.25);
    private static final double ROLL_NOISE = Math.toRadians(0.12);
    private static final double TURN_NOISE = Math.toRadians(0.2);
    private static final double VELOCITY_NOISE = 0.04;
    private static final double POSITION_NOISE = 0.03;
    /** Slow wander of a fix: spread (m) and time over which it is forgotten (s). */
    private static final double WANDER = 0.6;

    private static final double WANDER_TIME = 60;
    private static final double WING_ANGLE_NOISE = Math.toRadians(0.1);
    private static final double LOAD_NOISE = 40;
    private static final double HEIGHT_NOISE = 0.03;
    private static final double SILENCE = 1.5;

    private final SensorFaults faults;
    private final double period;
    private final RandomStream noise;
    private final RandomStream silence;
    private final double[] silentUntil = new double[4];
    private double wanderNorth;
    private double wanderEast;
    private double windAhead = Double.NaN;
    private double windAbeam = Double.NaN;

    /** @param period between readings (s) */
    Instruments(SensorFaults faults, double period, long seed, String boat) {
        this.faults = faults;
        this.period = period;
        noise = RandomStream.of(seed, "noise of " + boat);
        silence = RandomStream.of(seed, "dropouts of " + boat);
        wanderNorth = WANDER * noise.normal();
        wanderEast = WANDER * noise.normal();
    }

    /** What is said of a moment that truly is like this; wing angles by gauges, wind by the sensor's own axes. */
    Reading read(Moment moment) {
        Reading.Fix fix = fix(moment);
        Reading.Attitude attitude = attitude(moment);
        Reading.Wind wind = wind(moment);
        Reading.Wing wing = wing(moment);
        for (int i = 0; i < silentUntil.length; i++) {
            if (silence.uniform() < faults.dropoutsPerHour() / 3600 / silentUntil.length * period) {
                silentUntil[i] = moment.time() - SILENCE * StrictMath.log(1 - silence.uniform());
            }
        }
        double time = moment.time();
        return new Reading(
                time,
                time < silentUntil[0] ? Reading.Fix.SILENT : fix,
                time < silentUntil[1] ? Reading.Attitude.SILENT : attitude,
                time < silentUntil[2] ? Reading.Wind.SILENT : wind,
                time < silentUntil[3] ? Reading.Wing.SILENT : wing);
    }

    private Reading.Fix fix(Moment moment) {
        double keep = StrictMath.exp(-period / WANDER_TIME);
        double fresh = WANDER * Math.sqrt(1 - keep * keep);
        wanderNorth = keep * wanderNorth + fresh * noise.normal();
        wanderEast = keep * wanderEast + fresh * noise.normal();
        double north = moment.velocityNorth() + VELOCITY_NOISE * noise.normal();
        double east = moment.velocityEast() + VELOCITY_NOISE * noise.normal();
        return new Reading.Fix(
                moment.north() + wanderNorth + POSITION_NOISE * noise.normal(),
                moment.east() + wanderEast + POSITION_NOISE * noise.normal(),
                Math.sqrt(north * north + east * east),
                Angles.compass(StrictMath.atan2(east, north)));
    }

    private Reading.Attitude attitude(Moment moment) {
        return new Reading.Attitude(
                Angles.compass(moment.heading() + faults.attitude().compass() + HEADING_NOISE * noise.normal()),
                moment.rateOfTurn() + TURN_NOISE * noise.normal(),
                moment.roll() + faults.attitude().roll() + ROLL_NOISE * noise.normal(),
                moment.pitch() + faults.attitude().pitch() + ROLL_NOISE * noise.normal());
    }

    /** Upwash turns the air before the vane feels it; the vane and cups follow late; then comes what is misaligned. */
    private Reading.Wind wind(Moment moment) {
        double truly = StrictMath.atan2(moment.windAbeam(), moment.windAhead());
        double speed = StrictMath.hypot(moment.windAbeam(), moment.windAhead());
        double bent = truly + faults.wind().upwash() * moment.liftCoefficient();
        double ahead = speed * StrictMath.cos(bent);
        double abeam = speed * StrictMath.sin(bent);
        double share = faults.wind().lag() <= 0
                ? 1
                : 1 - StrictMath.exp(-period / faults.wind().lag());
        windAhead = Double.isNaN(windAhead) ? ahead : windAhead + share * (ahead - windAhead);
        windAbeam = Double.isNaN(windAbeam) ? abeam : windAbeam + share * (abeam - windAbeam);
        double angle = StrictMath.atan2(windAbeam, windAhead) - moment.sensorTurned();
        double felt = StrictMath.hypot(windAhead, windAbeam);
        return new Reading.Wind(
                Math.max(0, felt * faults.wind().speedFactor() + WIND_SPEED_NOISE * noise.normal()),
                Angles.signed(angle + faults.wind().angle() + WIND_ANGLE_NOISE * noise.normal()));
    }

    private Reading.Wing wing(Moment moment) {
        SensorFaults.WingFault fault = faults.wing();
        return new Reading.Wing(
                moment.camber() + fault.camber() + WING_ANGLE_NOISE * noise.normal(),
                moment.twist() + fault.twist() + WING_ANGLE_NOISE * noise.normal(),
                moment.sheet() + fault.sheet() + WING_ANGLE_NOISE * noise.normal(),
                Math.max(0, moment.sheetLoad() * fault.loadFactor() + LOAD_NOISE * noise.normal()),
                moment.rideHeight() + fault.rideHeight() + HEIGHT_NOISE * noise.normal());
    }
}
