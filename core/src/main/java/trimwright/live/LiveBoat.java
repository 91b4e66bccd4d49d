package trimwright.live;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.boat.Boat;
import trimwright.platform.Platform;
import trimwright.response.SpeedResponse;
import trimwright.segment.FoilingRule;
import trimwright.segment.Tack;
import trimwright.target.Band;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetPoint;
import trimwright.target.TrimBands;
import trimwright.track.BoatTrack;
import trimwright.track.ChannelGroup;
import trimwright.track.Paths;
import trimwright.units.Angles;
import trimwright.wind.LiveWind;
import trimwright.wind.Quantity;
import trimwright.wind.Resampling;
import trimwright.wind.SessionClock;
import trimwright.wind.SpeedSource;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/**
 * One boat in one pass: takes values as they arrive, steps ten times a second, keeps seconds to minutes. Of several
 * sources of a path the first one stays until it falls silent. Not thread-safe.
 */
public final class LiveBoat {
    private static final long STEP = 100_000_000L;
    private static final long SECOND = 1_000_000_000L;

    /** After a silence of so long time is not stepped through (s, chosen). */
    private static final long JUMP = 60 * SECOND;

    /** Below it a boat lies at the dock or drifts (m/s, chosen). */
    private static final double MOVING = 1.0;

    /** Beyond it she is over on her side (rad, chosen: far above any heel that is sailed at). */
    private static final double CAPSIZED = Math.toRadians(45);

    /** Mean radius (m): of the sphere with the area of the WGS84 ellipsoid. */
    private static final double EARTH = 6_371_007;

    /** Standard error of a moment from load cells over its size (-, chosen: cells and where they stand on the boat). */
    private static final double CELL_ERROR = 0.01;

    /** Share of the largest moment that is aimed at, at most (-, chosen: what an instrument and a swell take). */
    private static final double MOMENT_AIM = 0.95;

    /** Target's change with the wind's where the book does not tell (-, chosen: targets of the shipped boat reaching). */
    private static final double USUAL_SLOPE = 1.5;

    private final @Nullable Boat boat;
    private final @Nullable TargetBook book;
    private final @Nullable FoilingRule bySpeed;
    private final Map<String, Map<String, LiveChannel>> channels = new LinkedHashMap<>();
    private final Map<String, LiveChannel> chosen = new LinkedHashMap<>();
    private final LiveWind wind;
    private final Steering steering = new Steering();
    private final LiveSpan speeds = new LiveSpan(LiveAim.SPEED_SECONDS);
    private final LiveSpan made = new LiveSpan(LiveAim.SPEED_SECONDS);
    private final LiveAim aim;
    private long next = Long.MIN_VALUE;
    private double variation = Double.NaN;
    private double secondSum;
    private int secondCount;
    private boolean up;
    private @Nullable Target target;
    private final @Nullable LiveMargin margin;
    private LiveMargin.Margin taken = LiveMargin.Margin.NONE;

    /**
     * @param boat her file, or null: then wind stays at the sensor's height
     * @param book her targets, or null
     * @param bySpeed when she flies, for boats that log no ride height; null where nothing tells
     */
    public LiveBoat(@Nullable Boat boat, @Nullable TargetBook book, FoilingRule.@Nullable BySpeed bySpeed) {
        this(boat, book, bySpeed, null);
    }

    /**
     * As above, with the boat's response: then speed is judged against what is reachable.
     *
     * @param response null where it is not known
     */
    public LiveBoat(
            @Nullable Boat boat,
            @Nullable TargetBook book,
            FoilingRule.@Nullable BySpeed bySpeed,
            @Nullable SpeedResponse response) {
        this(boat, book, bySpeed, response, null);
    }

    /**
     * As above, with aims: a target on the foils is judged and called as far below its limits as the wind's measured unrest asks.
     *
     * @param platform of the targets; null: at the limits, but for a twentieth of the moment
     */
    public LiveBoat(
            @Nullable Boat boat,
            @Nullable TargetBook book,
            FoilingRule.@Nullable BySpeed bySpeed,
            @Nullable SpeedResponse response,
            @Nullable Platform platform) {
        margin = platform == null ? null : new LiveMargin(platform);
        this.boat = boat;
        this.book = book;
        this.bySpeed = bySpeed;
        aim = new LiveAim(response);
        wind = new LiveWind(boat);
    }

    /** Takes a value that arrived; NaN is passed over. */
    public void put(String source, String path, long nanos, double value) {
        if (Double.isNaN(value)) {
            return;
        }
        LiveChannel channel = channels.computeIfAbsent(path, p -> new LinkedHashMap<>())
                .computeIfAbsent(source, s -> new LiveChannel(path));
        channel.put(nanos, value);
        LiveChannel now = chosen.get(path);
        if (now == null || (now != channel && now.isStale(nanos))) {
            chosen.put(path, channel);
        }
    }

    /** Lets time go on to that instant; it never goes back. */
    public void advance(long nanos) {
        if (next == Long.MIN_VALUE || nanos - next > JUMP) {
            next = Math.floorDiv(nanos, STEP) * STEP;
        }
        for (; next <= nanos; next += STEP) {
            step(next);
        }
    }

    private void step(long now) {
        double speed = speed(now);
        steering.add(heading(now));
        if (!Double.isNaN(speed)) {
            secondSum += speed;
            secondCount++;
        }
        stepFoiling(now, speed);
        if (Math.floorMod(now, SECOND) == 0) {
            stepWind(now);
            stepSecond(now);
        }
    }

    private void stepFoiling(long now, double speed) {
        double height = fresh(Paths.RIDE_HEIGHT, now);
        if (!Double.isNaN(height)) {
            FoilingRule.ByRideHeight rule = FoilingRule.ByRideHeight.DEFAULT;
            up = up ? height > rule.down() : height >= rule.up();
        } else if (bySpeed instanceof FoilingRule.BySpeed rule && !Double.isNaN(speed)) {
            up = up ? speed > rule.down() : speed >= rule.up();
        }
    }

    private void stepWind(long now) {
        long block = now - SECOND - (long) (LiveWind.DELAY * 1e9);
        if (block <= wind.blockNanos()) {
            return;
        }
        List<ChannelGroup> groups = new ArrayList<>();
        for (LiveChannel channel : chosen.values()) {
            ChannelGroup group = channel.since(block - (long) (LiveWind.BEFORE * 1e9));
            if (group != null) {
                groups.add(group);
            }
        }
        if (groups.isEmpty()) {
            return;
        }
        BoatTrack window = new BoatTrack("", groups);
        learnVariation(wind.step(window, block), window);
    }

    /** The heading that the debrief would take, less the magnetic one as read. */
    private void learnVariation(WindTrack found, BoatTrack window) {
        SessionClock clock = found.clock();
        double[] magnetic = Resampling.onto(
                clock, window, Paths.HEADING_MAGNETIC, Quantity.Kind.COMPASS, WindOptions.DEFAULT.longestGap());
        for (int i = clock.size() - 1; i >= 0; i--) {
            double between = Angles.difference(found.get(Quantity.HEADING, i), magnetic[i]);
            if (!Double.isNaN(between)) {
                variation = between;
                return;
            }
        }
    }

    private void stepSecond(long now) {
        double speed = secondCount == 0 ? Double.NaN : secondSum / secondCount;
        secondSum = 0;
        secondCount = 0;
        double twa = twa(now);
        double tws = freshTws(now);
        TargetPoint point = book == null || Double.isNaN(tws) || Double.isNaN(twa)
                ? null
                : book.find(tws, twa).point();
        target = point == null ? null : point.target();
        boolean flies = target != null && point != null && point.isFoiling();
        taken = margin == null || !flies || point == null
                ? LiveMargin.Margin.NONE
                : margin.at(now, point, wind.turbulence());
        if (state(now) == LiveState.EYES_OUT) {
            List.of(speeds, made).forEach(LiveSpan::clear);
            aim.clear();
            return;
        }
        speeds.add(speed);
        made.add(speed * Math.abs(StrictMath.cos(twa)));
        aim.add(speed, new LiveFigures.Estimate(taken.speed() * boatSpeed(target), targetError(tws, twa)), tws, twa);
    }

    private static double boatSpeed(@Nullable Target target) {
        return target == null ? Double.NaN : target.boatSpeed();
    }

    /** What the wind's standard error makes of the target (m/s); where the book ends beside it, the usual slope's. */
    private double targetError(double tws, double twa) {
        TargetBook known = book;
        if (known == null || target == null) {
            return Double.NaN;
        }
        double error = wind.error();
        double more = boatSpeed(known.find(tws + error, twa).target());
        double less = boatSpeed(known.find(tws - error, twa).target());
        double half = Math.abs(more - less) / 2;
        return Double.isNaN(half) ? USUAL_SLOPE * error : half;
    }

    private double fresh(String path, long now) {
        LiveChannel channel = chosen.get(path);
        return channel == null ? Double.NaN : channel.fresh(now);
    }

    private double speed(long now) {
        double overGround = fresh(Paths.SOG, now);
        return Double.isNaN(overGround) ? fresh(Paths.STW, now) : overGround;
    }

    private double heading(long now) {
        double heading = fresh(Paths.HEADING, now);
        return Double.isNaN(heading) ? Angles.compass(fresh(Paths.HEADING_MAGNETIC, now) + variation) : heading;
    }

    /** Where she goes: over ground where that is known and means something, else where she points. */
    private double course(long now) {
        double course = fresh(Paths.COG, now);
        return Double.isNaN(course) || !(fresh(Paths.SOG, now) > MOVING) ? heading(now) : course;
    }

    private double freshTws(long now) {
        return isWindFresh(now) ? wind.speed() : Double.NaN;
    }

    private boolean isWindFresh(long now) {
        return !Double.isNaN(fresh(Paths.AWA, now)) && !Double.isNaN(fresh(Paths.AWS, now));
    }

    private double twa(long now) {
        return isWindFresh(now) ? Angles.difference(wind.direction(), course(now)) : Double.NaN;
    }

    private double awa(long now) {
        double awa = fresh(Paths.AWA, now);
        boolean turns = boat != null && boat.windSensor().turnsWithWing();
        // Sheet > 0 turns the leading edge to starboard of the bow line.
        return turns ? Angles.signed(awa + fresh(Paths.SHEET, now)) : awa;
    }

    private LiveState state(long now) {
        double speed = speeds.mean(1);
        double current = Double.isNaN(speed) ? speed(now) : speed;
        if (Math.abs(fresh(Paths.ROLL, now)) > CAPSIZED) {
            return LiveState.EYES_OUT;
        }
        if (Double.isNaN(speed(now))) {
            return LiveState.NO_DATA;
        }
        if (current < MOVING && speed(now) < 2 * MOVING) {
            return LiveState.DOCK;
        }
        if (steering.isTurning()) {
            return LiveState.EYES_OUT;
        }
        boolean told = bySpeed != null || !Double.isNaN(fresh(Paths.RIDE_HEIGHT, now));
        return !told ? LiveState.STRAIGHT : up ? LiveState.ON_FOILS : LiveState.OFF_FOILS;
    }

    /** Where she is at the last step. */
    public LivePlace place() {
        long now = next == Long.MIN_VALUE ? 0 : next - STEP;
        return new LivePlace(fresh(Paths.LATITUDE, now), fresh(Paths.LONGITUDE, now), heading(now), course(now));
    }

    /** Distance to another boat by what both satellite receivers say now (m); NaN where one does not. */
    public double distanceTo(LiveBoat other) {
        long now = next == Long.MIN_VALUE ? 0 : next - STEP;
        double latitude = fresh(Paths.LATITUDE, now);
        double north = other.fresh(Paths.LATITUDE, now) - latitude;
        double east = (other.fresh(Paths.LONGITUDE, now) - fresh(Paths.LONGITUDE, now)) * StrictMath.cos(latitude);
        return EARTH * StrictMath.hypot(north, east);
    }

    /** As she is at the last step. */
    public LiveFigures figures() {
        long now = next == Long.MIN_VALUE ? 0 : next - STEP;
        double twa = twa(now);
        double side = Double.isNaN(twa) ? awa(now) : twa;
        Tack tack = Double.isNaN(side) ? null : Tack.of(side);
        boolean ground = !Double.isNaN(fresh(Paths.SOG, now));
        SpeedSource source =
                Double.isNaN(speed(now)) ? null : ground ? SpeedSource.OVER_GROUND : SpeedSource.THROUGH_WATER;
        // Roll is positive to starboard; with wind from starboard that is to windward.
        double heel = tack == null ? Double.NaN : tack.sign() * fresh(Paths.ROLL, now);
        LiveFigures.Motion motion = new LiveFigures.Motion(
                speed(now), source, heading(now), made.mean(LiveAim.FEWEST), heel, fresh(Paths.RIDE_HEIGHT, now));
        LiveFigures.Wind winds = new LiveFigures.Wind(
                freshTws(now),
                isWindFresh(now) ? wind.direction() : Double.NaN,
                twa,
                fresh(Paths.AWS, now),
                awa(now),
                tack);
        return new LiveFigures(now, state(now), motion, winds, aim.figures(), trim(now, tack), load(now), faults(now));
    }

    private LiveFigures.Trim trim(long now, @Nullable Tack tack) {
        Target at = target;
        int sign = tack == null ? 0 : tack.sign();
        double camber = sign == 0 ? Double.NaN : sign * fresh(Paths.CAMBER, now);
        double twist = sign == 0 ? Double.NaN : sign * fresh(Paths.TWIST, now);
        double sheet = sign == 0 ? Double.NaN : sign * fresh(Paths.SHEET, now);
        if (at == null || !isWindFresh(now)) {
            return new LiveFigures.Trim(alone(camber), alone(twist), alone(sheet));
        }
        TrimBands bands = at.bands();
        return new LiveFigures.Trim(
                aimed(camber, bands.camber(), at.trim().camber(), taken.camber()),
                aimed(twist, bands.twist(), at.trim().twist(), taken.twist()),
                aimed(sheet, bands.sheet(), at.trim().sheet(), taken.sheet()));
    }

    /** The band lies about the target; about the aim it is taken to be as wide. */
    private static Gauge aimed(double value, Band band, double target, double off) {
        return new Gauge(value, band.low() + off, target + off, band.high() + off);
    }

    private LiveFigures.Load load(long now) {
        double read = Math.abs(fresh(Paths.HEELING_MOMENT, now));
        LiveFigures.Estimate moment = new LiveFigures.Estimate(read, CELL_ERROR * read);
        Target at = target;
        if (at == null || !isWindFresh(now)) {
            return new LiveFigures.Load(moment, Double.NaN, Double.NaN, Double.NaN, wind.turbulence());
        }
        double limit = at.loads().rightingMoment() / at.loads().rightingMomentRatio();
        double aimed = Math.min(taken.moment() * at.loads().rightingMoment(), MOMENT_AIM * limit);
        return new LiveFigures.Load(moment, aimed, limit, at.attitude().heel() + taken.heel(), wind.turbulence());
    }

    private static Gauge alone(double value) {
        return new Gauge(value, Double.NaN, Double.NaN, Double.NaN);
    }

    private List<SensorFault> faults(long now) {
        List<SensorFault> faults = new ArrayList<>();
        for (Sensor sensor : Sensor.values()) {
            double youngest = Double.POSITIVE_INFINITY;
            boolean heard = false;
            boolean works = false;
            boolean frozen = false;
            for (String path : sensor.paths()) {
                LiveChannel channel = chosen.get(path);
                if (channel != null) {
                    heard = true;
                    works |= !Double.isNaN(channel.fresh(now));
                    frozen |= !channel.isStale(now) && channel.isFrozen(now);
                    youngest = Math.min(youngest, channel.age(now));
                }
            }
            if (heard && (!works || frozen)) {
                SensorFault.Kind kind = frozen ? SensorFault.Kind.FROZEN : SensorFault.Kind.SILENT;
                faults.add(new SensorFault(sensor, kind, youngest));
            }
        }
        return faults;
    }
}
