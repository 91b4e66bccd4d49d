package trimwright.wind;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.air.ApparentWind;
import trimwright.air.TrueWind;
import trimwright.boat.Boat;
import trimwright.boat.WindSensor;
import trimwright.track.BoatTrack;
import trimwright.track.Paths;
import trimwright.units.Angles;

/**
 * Finds the wind that a boat sailed in: resamples its channels, picks the boat speed, solves the wind triangle in three
 * dimensions at each instant, smooths. What had to be assumed comes back as caveats.
 */
public final class SailedWind {
    /** Rate of turn is the slope over this time to either side (s), chosen: longer than a steering wobble in waves. */
    private static final double TURN_WINDOW = 1.5;

    /** Roll and pitch rates are slopes over this time to either side (s); slower channels tell no rate (chosen). */
    private static final double ROLL_WINDOW = 0.3;

    private static final double SLOWEST_ROLL = 0.35;

    private final BoatTrack track;
    private final SessionClock clock;
    private final @Nullable Boat boat;
    private final WindOptions options;
    private final WindCorrection correction;
    private final Map<Quantity, double[]> values = new EnumMap<>(Quantity.class);
    private final Set<WindCaveat> caveats = EnumSet.noneOf(WindCaveat.class);

    private SailedWind(
            BoatTrack track, SessionClock clock, @Nullable Boat boat, WindOptions options, WindCorrection correction) {
        this.correction = correction;
        this.track = track;
        this.clock = clock;
        this.boat = boat;
        this.options = options;
    }

    /**
     * The wind of one boat on the session's clock.
     *
     * @param boat where the sensor stands, or null where that is not known
     */
    public static WindTrack of(BoatTrack track, SessionClock clock, @Nullable Boat boat, WindOptions options) {
        return of(track, clock, boat, options, WindCorrection.NONE);
    }

    /** The same with readings corrected; does nothing where the log has no apparent wind. */
    public static WindTrack of(
            BoatTrack track, SessionClock clock, @Nullable Boat boat, WindOptions options, WindCorrection correction) {
        return new SailedWind(track, clock, boat, options, correction).find();
    }

    /** The rate (Hz) of the clock that suits the track: that of its fastest channel of motion and wind, 1 to 10. */
    public static int rateOf(BoatTrack track) {
        double shortest = 1.0;
        for (String path : new String[] {Paths.AWA, Paths.SOG, Paths.STW, Paths.HEADING, Paths.HEADING_MAGNETIC}) {
            double interval = Resampling.interval(track, path);
            shortest = Double.isNaN(interval) ? shortest : Math.min(shortest, interval);
        }
        double rate = 1.0 / shortest;
        // Halfway marks, so that jitter about a nominal rate does not change the answer.
        return rate > 7.5 ? 10 : rate > 3.5 ? 5 : rate > 1.5 ? 2 : 1;
    }

    private WindTrack find() {
        for (Quantity quantity : Quantity.values()) {
            String path = quantity.path();
            if (path != null) {
                put(quantity, Resampling.onto(clock, track, path, quantity.kind(), options.longestGap()));
            }
        }
        double[] heading = Headings.of(clock, track, options.longestGap(), caveats);
        put(Quantity.HEADING, heading);
        put(Quantity.RATE_OF_TURN, Rates.of(heading, clock.steps(TURN_WINDOW), clock.step()));
        boolean foils = boat != null || values.containsKey(Quantity.RIDE_HEIGHT);
        WindTrack.Basis basis = SpeedChoice.of(column(Quantity.STW), column(Quantity.SOG), foils, options.speed());
        BoatVelocity[] velocity = move(basis.source());
        double interval = rawWind(velocity);
        WindSmoothing.Smoothed smoothed = WindSmoothing.of(
                clock,
                column(Quantity.RAW_TWS),
                column(Quantity.RAW_TWD),
                column(Quantity.RATE_OF_TURN),
                Double.isNaN(interval) ? 1.0 : interval);
        put(Quantity.TWS, smoothed.speed());
        put(Quantity.TWD, smoothed.direction());
        angles();
        return new WindTrack(track.boat(), clock, values, basis, smoothed.noise(), correction, caveats);
    }

    private void put(Quantity quantity, double[] column) {
        if (!Arrays.stream(column).allMatch(Double::isNaN)) {
            values.put(quantity, column);
        }
    }

    private double[] column(Quantity quantity) {
        double[] column = values.get(quantity);
        if (column != null) {
            return column;
        }
        double[] absent = new double[clock.size()];
        Arrays.fill(absent, Double.NaN);
        return absent;
    }

    /** Velocity at each instant; fills speed and course. */
    private BoatVelocity[] move(SpeedSource source) {
        boolean overGround = source == SpeedSource.OVER_GROUND;
        if (!values.containsKey(Quantity.STW)) {
            caveats.add(WindCaveat.NOT_SEPARABLE);
        }
        if (overGround) {
            caveats.add(WindCaveat.WIND_OVER_GROUND);
            if (!values.containsKey(Quantity.COG)) {
                caveats.add(WindCaveat.COURSE_FROM_HEADING);
            }
        } else if (!values.containsKey(Quantity.LEEWAY)) {
            caveats.add(WindCaveat.LEEWAY_UNKNOWN);
        }
        double[] along = column(overGround ? Quantity.SOG : Quantity.STW);
        double[] heading = column(Quantity.HEADING);
        double[] cog = column(Quantity.COG);
        double[] leeway = column(Quantity.LEEWAY);
        BoatVelocity[] velocity = new BoatVelocity[along.length];
        double[] speed = new double[along.length];
        double[] course = new double[along.length];
        for (int i = 0; i < along.length; i++) {
            double drift;
            if (overGround) {
                drift = values.containsKey(Quantity.COG) ? Angles.difference(cog[i], heading[i]) : 0;
                velocity[i] = new BoatVelocity(along[i] * StrictMath.cos(drift), along[i] * StrictMath.sin(drift));
            } else {
                // Signed leeway is positive with wind from starboard, when the boat slides to port.
                drift = Double.isNaN(leeway[i]) ? 0 : -leeway[i];
                velocity[i] = new BoatVelocity(along[i], along[i] * StrictMath.tan(drift));
            }
            speed[i] = StrictMath.hypot(velocity[i].ahead(), velocity[i].starboard());
            course[i] = Angles.compass(heading[i] + drift);
        }
        put(Quantity.SPEED, speed);
        put(Quantity.COURSE, course);
        return velocity;
    }

    /** Fills the raw wind; returns the interval of its sensor (s). */
    private double rawWind(BoatVelocity[] velocity) {
        boolean measured = values.containsKey(Quantity.AWA) && values.containsKey(Quantity.AWS);
        if (!measured) {
            LoggedWind logged = LoggedWind.of(clock, track, column(Quantity.HEADING), options.longestGap());
            caveats.add(logged.isAbsent() ? WindCaveat.NO_WIND : WindCaveat.WIND_AS_LOGGED);
            put(Quantity.RAW_TWS, logged.speed());
            put(Quantity.RAW_TWD, logged.direction());
            return logged.interval();
        }
        boolean calibrated = options.sensors() == WindOptions.Sensors.CALIBRATED;
        caveats.add(
                !correction.isNone()
                        ? WindCaveat.SENSOR_CORRECTED
                        : calibrated ? WindCaveat.SENSOR_CALIBRATED : WindCaveat.UPWASH_NOT_REMOVED);
        if (!values.containsKey(Quantity.ROLL)) {
            caveats.add(WindCaveat.HEEL_UNKNOWN);
        }
        if (!values.containsKey(Quantity.PITCH)) {
            caveats.add(WindCaveat.PITCH_UNKNOWN);
        }
        SensorMotion motion = sensorMotion();
        double[] awa = awaFromBow();
        double[] aws = column(Quantity.AWS);
        double[] heading = column(Quantity.HEADING);
        if (boat == null) {
            caveats.add(WindCaveat.WIND_AT_SENSOR_HEIGHT);
            if (values.containsKey(Quantity.SHEET)) {
                caveats.add(WindCaveat.SENSOR_TAKEN_AS_FIXED);
            }
        }
        double[] speed = new double[awa.length];
        double[] direction = new double[awa.length];
        for (int i = 0; i < awa.length; i++) {
            ApparentWind felt = motion.removedFrom(correction.of(new ApparentWind(aws[i], awa[i])), i);
            Attitude attitude = new Attitude(known(Quantity.ROLL, i), known(Quantity.PITCH, i));
            TrueWind wind = WindTriangle.trueWind(felt, attitude, velocity[i]);
            speed[i] = wind.speed() * toReference(wind.speed(), i);
            direction[i] = Angles.compass(heading[i] + wind.angle());
            if (Double.isNaN(direction[i])) {
                speed[i] = Double.NaN;
            }
        }
        put(Quantity.RAW_TWS, speed);
        put(Quantity.RAW_TWD, direction);
        return Resampling.interval(track, Paths.AWA);
    }

    /** Factor from the sensor's height to the reference height. Without ride height the hulls' bottom is at the water. */
    private double toReference(double speed, int i) {
        if (boat == null || Double.isNaN(speed)) {
            return 1;
        }
        double height =
                known(Quantity.RIDE_HEIGHT, i) + boat.windSensor().height() * StrictMath.cos(known(Quantity.ROLL, i));
        return SensorHeight.toReference(speed, height);
    }

    /** Where roll, pitch or ride height is missing it counts as zero; a log without roll or pitch says so in a caveat. */
    private double known(Quantity quantity, int i) {
        double[] column = values.get(quantity);
        return column == null || Double.isNaN(column[i]) ? 0 : column[i];
    }

    private SensorMotion sensorMotion() {
        double rollInterval = Resampling.interval(track, Paths.ROLL);
        if (boat == null || Double.isNaN(rollInterval) || rollInterval > SLOWEST_ROLL) {
            caveats.add(WindCaveat.SENSOR_MOTION_NOT_REMOVED);
            return SensorMotion.NONE;
        }
        int half = clock.steps(ROLL_WINDOW);
        return new SensorMotion(
                boat.windSensor(),
                Rates.of(column(Quantity.ROLL), half, clock.step()),
                Rates.of(column(Quantity.PITCH), half, clock.step()),
                column(Quantity.RATE_OF_TURN));
    }

    /** Apparent wind angle from the bow: a sensor on the wing measures from its chord. */
    private double[] awaFromBow() {
        double[] awa = column(Quantity.AWA);
        WindSensor sensor = boat == null ? null : boat.windSensor();
        if (sensor == null || !sensor.turnsWithWing()) {
            return awa;
        }
        if (!values.containsKey(Quantity.SHEET)) {
            caveats.add(WindCaveat.SENSOR_ON_WING_WITHOUT_SHEET);
        }
        double[] sheet = column(Quantity.SHEET);
        double[] fromBow = new double[awa.length];
        for (int i = 0; i < awa.length; i++) {
            // Sheet > 0 turns the leading edge to starboard of the bow line.
            fromBow[i] = Double.isNaN(sheet[i]) ? Double.NaN : Angles.signed(awa[i] + sheet[i]);
        }
        put(Quantity.AWA, fromBow);
        return fromBow;
    }

    private void angles() {
        double[] twd = column(Quantity.TWD);
        double[] heading = column(Quantity.HEADING);
        double[] course = column(Quantity.COURSE);
        double[] speed = column(Quantity.SPEED);
        double[] twa = new double[twd.length];
        double[] courseTwa = new double[twd.length];
        double[] vmg = new double[twd.length];
        for (int i = 0; i < twd.length; i++) {
            twa[i] = Angles.difference(twd[i], heading[i]);
            courseTwa[i] = Angles.difference(twd[i], course[i]);
            vmg[i] = speed[i] * StrictMath.cos(courseTwa[i]);
        }
        put(Quantity.TWA, twa);
        put(Quantity.COURSE_TWA, courseTwa);
        put(Quantity.VMG, vmg);
    }
}
