package trimwright.motion;

import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.wing.LinearWing;
import trimwright.wing.StripAir;
import trimwright.wing.Wing;
import trimwright.wing.WingAnswer;
import trimwright.wing.WingForce;
import trimwright.wing.WingSetting;
import trimwright.wing.WingSolved;

/**
 * Forces of the air on a moving boat: the wing with the air of each strip, roll and yaw rate included, and the windage of
 * platform and crew. The wing answers at once unless it is asked to lag behind its flow as {@link LaggedFlow} has it, and by its
 * equations in full unless it is asked to stay on their tangents where these serve, as {@link LinearWing} has it.
 */
final class AirForces {
    /** Lift slope of a strip in the wing (1/rad): two thirds of the section's, enough for a step's implicit part. */
    private static final double SLOPE = 4;

    /** Force coefficient above anything that the section's lift limit allows (-): chosen. */
    private static final double MOST_FORCE = 3.5;

    /** Beyond this the boat is lying on her side and the wing's equations are not asked for more (rad). */
    private static final double MOST_HEEL = 1.3;

    /** The wing's equations are solved in every second step, its force held in the other. */
    private static final int EVERY = 2;

    private final Boat boat;
    private final WingSpec spec;
    private final Wing wing;
    private final AirState air;
    private final double[] x;
    private final double[] y;
    private final double[] z;
    private @Nullable WingSolved last;
    private double lastPressure = 1;
    private WingForce held = new WingForce(0, 0, 0, 0, 0, 0);
    private final boolean lags;
    private final boolean isLinear;
    private @Nullable LaggedFlow lagged;
    private final SeparatedFlow separated;
    private @Nullable LinearWing near;
    private int solutions;
    private int calls;
    private int unsolved;

    private double turning;
    private double forward;
    private double starboard;
    private double heeling;
    private double margin;

    AirForces(Boat boat, WingSpec spec, AirState air, int strips, MotionModel.Lift lift, MotionModel.Line line) {
        isLinear = line == MotionModel.Line.LINEAR;
        lags = lift == MotionModel.Lift.LAGGING;
        this.boat = boat;
        this.spec = spec;
        this.air = air;
        wing = Wing.of(spec, strips);
        x = new double[strips];
        y = new double[strips];
        z = new double[strips];
        separated = new SeparatedFlow(strips);
    }

    /** One that goes on from here by itself. */
    AirForces copy() {
        AirForces other = new AirForces(this);
        System.arraycopy(x, 0, other.x, 0, x.length);
        System.arraycopy(y, 0, other.y, 0, y.length);
        System.arraycopy(z, 0, other.z, 0, z.length);
        return other;
    }

    private AirForces(AirForces of) {
        lags = of.lags;
        isLinear = of.isLinear;
        near = of.near == null ? null : of.near.copy();
        solutions = of.solutions;
        boat = of.boat;
        spec = of.spec;
        air = of.air;
        wing = of.wing;
        x = new double[of.x.length];
        y = new double[of.y.length];
        z = new double[of.z.length];
        last = of.last;
        lastPressure = of.lastPressure;
        held = of.held;
        lagged = of.lagged == null ? null : of.lagged.copy();
        separated = of.separated.copy();
        calls = of.calls;
        unsolved = of.unsolved;
        turning = of.turning;
        forward = of.forward;
        starboard = of.starboard;
        heeling = of.heeling;
        margin = of.margin;
    }

    /** @param dt length of a step (s), for what lags */
    void addTo(
            ForceSum sum,
            Kinematics motion,
            double roll,
            Controls controls,
            LocalWind wind,
            double heading,
            double dt) {
        double cos = StrictMath.cos(heading);
        double sin = StrictMath.sin(heading);
        double foot = -spec.footHeight();
        if (calls % EVERY == 0) {
            held = lags
                    ? solveLagging(motion, roll, controls, wind, cos, sin, EVERY * dt)
                    : solve(motion, roll, controls, wind, cos, sin, EVERY * dt);
        }
        calls++;
        WingForce force = held;
        sum.add(force.x(), force.y(), force.z(), spec.x(), 0, foot);
        sum.addMoment(force.k(), force.m(), force.n());
        turning = force.turningMoment();
        forward = force.x();
        starboard = force.y();
        heeling = force.k() - foot * force.y();

        addWindage(sum, motion, wind, cos, sin);
    }

    private WingForce solve(
            Kinematics motion, double roll, Controls controls, LocalWind wind, double cos, double sin, double dt) {
        double foot = -spec.footHeight();
        for (int i = 0; i < x.length; i++) {
            double at = foot - wing.stripHeight(i);
            double height = motion.heightInWind(spec.x(), 0, at);
            double ahead = wind.ahead(height, cos, sin);
            double abeam = wind.abeam(height, cos, sin);
            x[i] = motion.bodyX(ahead, 0) - motion.velocityX(0, at);
            y[i] = motion.bodyY(ahead, abeam, 0) - motion.velocityY(spec.x(), at);
            z[i] = motion.bodyZ(ahead, abeam, 0) - motion.velocityZ(spec.x(), 0);
        }
        return solve(roll, Math.max(0.2, -motion.depth(spec.x(), 0, foot)), controls, dt);
    }

    private WingForce solveLagging(
            Kinematics motion, double roll, Controls controls, LocalWind wind, double cos, double sin, double dt) {
        double foot = -spec.footHeight();
        double[] windX = new double[x.length];
        double[] windY = new double[x.length];
        double[] ownY = new double[x.length];
        double travelled = 0;
        double chord = 0;
        for (int i = 0; i < x.length; i++) {
            double at = foot - wing.stripHeight(i);
            double height = motion.heightInWind(spec.x(), 0, at);
            double ahead = wind.ahead(height, cos, sin);
            double abeam = wind.abeam(height, cos, sin);
            windX[i] = motion.bodyX(ahead, 0);
            windY[i] = motion.bodyY(ahead, abeam, 0);
            ownY[i] = motion.velocityY(spec.x(), at);
            x[i] = windX[i] - motion.velocityX(0, at);
            y[i] = windY[i] - ownY[i];
            z[i] = motion.bodyZ(ahead, abeam, 0) - motion.velocityZ(spec.x(), 0);
            travelled += Math.sqrt(x[i] * x[i] + y[i] * y[i]) * dt * wing.stripWidth(i);
            chord += wing.stripChord(i) * wing.stripWidth(i);
        }
        LaggedFlow flow = lagged;
        if (flow == null) {
            flow = new LaggedFlow(windX, windY, ownY, controls);
            lagged = flow;
        }
        for (int i = 0; i < x.length; i++) {
            double halfChords = halfChords(i, dt);
            x[i] += flow.windX(i, windX[i], halfChords) - windX[i];
            y[i] += flow.windY(i, windY[i], halfChords) - windY[i] - flow.ownY(i, ownY[i], halfChords) + ownY[i];
        }
        Controls acting = flow.setting(controls, 2 * travelled / chord);
        return solve(roll, Math.max(0.2, -motion.depth(spec.x(), 0, foot)), acting, dt);
    }

    /** CdA(b) = CdA ahead cos^2 b + CdA abeam sin^2 b along the wind felt, as in steady sailing. */
    private void addWindage(ForceSum sum, Kinematics motion, LocalWind wind, double cos, double sin) {
        double px = boat.windage().x();
        double pz = -boat.windage().height();
        double height = motion.heightInWind(px, 0, pz);
        double ahead = wind.ahead(height, cos, sin);
        double abeam = wind.abeam(height, cos, sin);
        double u = motion.bodyX(ahead, 0) - motion.velocityX(0, pz);
        double v = motion.bodyY(ahead, abeam, 0) - motion.velocityY(px, pz);
        double felt = Math.sqrt(u * u + v * v) + 1e-12;
        double area = (boat.windage().areaAhead() * u * u + boat.windage().areaAbeam() * v * v) / (felt * felt);
        double pull = 0.5 * air.density() * felt * area;
        sum.add(pull * u, pull * v, 0, px, 0, pz);
        heeling -= pz * pull * v;
    }

    /** Where the wing's equations have no answer, mostly in irons, the last force is kept, scaled with the wind's pressure. */
    private WingForce solve(double roll, double footHeight, Controls controls, double dt) {
        WingSetting setting =
                new WingSetting(controls.sheet(), controls.camber(), controls.twist(), controls.twistMid());
        double heel = Math.max(-MOST_HEEL, Math.min(MOST_HEEL, roll));
        WingForce nearby = near == null ? null : near.force(x, y, setting, heel, footHeight);
        if (near != null && nearby != null) {
            margin = near.stallMargin();
            return nearby;
        }
        near = null;
        double pressure = 0;
        for (int i = 0; i < x.length; i++) {
            pressure += (x[i] * x[i] + y[i] * y[i]) * wing.stripWidth(i) / wing.span();
        }
        solutions++;
        WingAnswer answer = wing.placedAt(heel, footHeight)
                .solve(new StripAir(x, y, z, air, lags ? separated.share() : null), setting, last);
        if (answer instanceof WingSolved solved && isPlausible(solved.force(), pressure)) {
            last = solved;
            lastPressure = pressure;
            margin = solved.stallMargin();
            note(solved, dt);
            near = isLinear && separated.isAttached() ? LinearWing.at(solved) : null;
            return solved.force();
        }
        unsolved++;
        if (last == null) {
            return held;
        }
        double share = Math.min(1, pressure / lastPressure);
        WingForce kept = last.force();
        return new WingForce(
                kept.x() * share,
                kept.y() * share,
                kept.z() * share,
                kept.k() * share,
                kept.m() * share,
                kept.n() * share);
    }

    private void note(WingSolved solved, double dt) {
        for (int i = 0; lags && i < x.length; i++) {
            separated.note(i, solved.stallMargin(i), halfChords(i, dt));
        }
    }

    /** How far the air at a strip now goes in a time (s), in half chords (-). */
    private double halfChords(int i, double dt) {
        return 2 * Math.sqrt(x[i] * x[i] + y[i] * y[i]) * dt / wing.stripChord(i);
    }

    /** Deep in stall the equations can settle on a flow that no wing has; its force gives it away. */
    private boolean isPlausible(WingForce force, double speedSquared) {
        double most = MOST_FORCE * 0.5 * air.density() * speedSquared * wing.area();
        return force.x() * force.x() + force.y() * force.y() <= most * most;
    }

    /**
     * Damping of roll by the wing (N m s): lift slope of a strip times height squared, at the wind's present speed. Used to
     * make the step implicit; the damping itself comes from the strips' own air.
     */
    double rollDamping() {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            double height = spec.footHeight() + wing.stripHeight(i);
            double speed = Math.sqrt(x[i] * x[i] + y[i] * y[i]);
            sum += 0.5 * air.density() * speed * SLOPE * wing.stripChord(i) * wing.stripWidth(i) * height * height;
        }
        return sum;
    }

    /** Forgets the flow of the step before. */
    void forget() {
        last = null;
        near = null;
        lagged = null;
        separated.forget();
        calls = 0;
    }

    double turningMoment() {
        return turning;
    }

    double wingForward() {
        return forward;
    }

    double wingStarboard() {
        return starboard;
    }

    double heeling() {
        return heeling;
    }

    double stallMargin() {
        return margin;
    }

    /** How often so far the wing's equations were solved in full, or tried. */
    int solutions() {
        return solutions;
    }

    /** Steps so far in which the wing's equations had no answer. */
    int unsolved() {
        return unsolved;
    }
}
