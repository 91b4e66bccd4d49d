package trimwright.platform;

import java.util.Arrays;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.WingSpec;
import trimwright.foil.Flow;
import trimwright.foil.FoilLoad;
import trimwright.foil.MainFoilModel;
import trimwright.foil.RudderModel;
import trimwright.hull.HullLoad;
import trimwright.hull.HullModel;
import trimwright.water.WaterState;
import trimwright.wing.StripAir;
import trimwright.wing.Wing;
import trimwright.wing.WingAnswer;
import trimwright.wing.WingForce;
import trimwright.wing.WingSetting;
import trimwright.wing.WingSolved;

/**
 * The six equations once more, by another road: everything is summed in level axes that look along the course, about a
 * point on the water, with rotations as matrices. It asks the same models for the force on wing, foils and hulls, and shares
 * nothing else with the code that balances the boat: not its rotations, wind triangle, weights, windage or sums.
 *
 * <p>Level axes here: x along the course through the water, y to starboard of it, z down, origin on the undisturbed water
 * below the origin of the body axes.
 */
public final class IndependentBalance {
    private static final double G = 9.80665;

    private final Boat boat;
    private final WingSpec spec;
    private final AirState air;
    private final WaterState water;
    private final Conditions conditions;
    private final SailingState state;
    private final int tack;
    private final double[][] toLevel;
    private final double[] sum = new double[6];

    private IndependentBalance(
            Boat boat, WingSpec spec, AirState air, WaterState water, SailingState state, Conditions conditions) {
        this.boat = boat;
        this.spec = spec;
        this.air = air;
        this.water = water;
        this.state = state;
        this.conditions = conditions;
        tack = conditions.windward() == Side.STARBOARD ? 1 : -1;
        // The boat drifts away from the wind, so the bow points to windward of the course.
        double yaw = tack * state.get(Variable.LEEWAY);
        double roll = tack * state.get(Variable.HEEL);
        toLevel = times(aboutZ(yaw), times(aboutY(state.get(Variable.PITCH)), aboutX(roll)));
    }

    /**
     * What is left of the six equations: three forces over weight, three moments over weight times length, level axes,
     * about the point on the water.
     */
    public static double[] residuals(
            Boat boat, WingSpec spec, AirState air, WaterState water, SailingState state, Conditions conditions) {
        IndependentBalance balance = new IndependentBalance(boat, spec, air, water, state, conditions);
        balance.weights();
        balance.windage();
        balance.wing();
        balance.foils();
        balance.hulls();
        double weight = balance.weight();
        double[] over = balance.sum.clone();
        for (int i = 0; i < 6; i++) {
            over[i] /= i < 3 ? weight : weight * boat.hulls().lengthOverall();
        }
        return over;
    }

    /** Force of the air (N): along the course through the water, to starboard of it, down. */
    public static double[] air(
            Boat boat, WingSpec spec, AirState air, WaterState water, SailingState state, Conditions conditions) {
        IndependentBalance balance = new IndependentBalance(boat, spec, air, water, state, conditions);
        balance.windage();
        balance.wing();
        return Arrays.copyOf(balance.sum, 3);
    }

    /** Force of the water (N) in the same axes. */
    public static double[] water(
            Boat boat, WingSpec spec, AirState air, WaterState water, SailingState state, Conditions conditions) {
        IndependentBalance balance = new IndependentBalance(boat, spec, air, water, state, conditions);
        balance.foils();
        balance.hulls();
        return Arrays.copyOf(balance.sum, 3);
    }

    /** Largest of them. */
    public static double largest(double[] residuals) {
        double largest = 0;
        for (double r : residuals) {
            largest = Math.max(largest, Math.abs(r));
        }
        return largest;
    }

    private double weight() {
        return G
                * (boat.platform().mass()
                        + spec.mass()
                        + boat.crew().count() * boat.crew().massEach());
    }

    private void weights() {
        hang(boat.platform().mass(), boat.platform().x(), 0, boat.platform().height());
        hang(spec.mass(), spec.x(), 0, spec.footHeight() + spec.massHeight());
        hang(
                boat.crew().count() * boat.crew().massEach(),
                boat.crew().x(),
                tack * state.get(Variable.CREW_PLACE),
                boat.crew().height());
    }

    private void hang(double mass, double x, double y, double height) {
        addLevel(new double[] {0, 0, mass * G}, level(new double[] {x, y, -height}));
    }

    private void windage() {
        double[] at = {boat.windage().x(), 0, -boat.windage().height()};
        double[] wind = apparent(level(at));
        double speed = Math.hypot(wind[0], wind[1]);
        // Angle of the apparent wind from the bow, which points to windward of the course
        double angle = Math.atan2(-wind[1], -wind[0]) - tack * state.get(Variable.LEEWAY);
        double area = boat.windage().areaAhead() * Math.pow(Math.cos(angle), 2)
                + boat.windage().areaAbeam() * Math.pow(Math.sin(angle), 2);
        double pressure = 0.5 * air.density() * speed * speed * area;
        if (speed > 0) {
            addLevel(new double[] {pressure * wind[0] / speed, pressure * wind[1] / speed, 0}, level(at));
        }
    }

    /** Wind past the boat at a point in level axes: true wind less the boat's way along the course. */
    private double[] apparent(double[] level) {
        double wind = conditions.wind().speedAt(-level[2]);
        double from = tack * state.get(Variable.TRUE_WIND_ANGLE);
        return new double[] {-wind * Math.cos(from) - state.get(Variable.BOAT_SPEED), -wind * Math.sin(from), 0};
    }

    private void wing() {
        int strips = 24; // as many as the balance uses: another number is another wing
        Wing wing = Wing.of(spec, strips);
        double[] step = {spec.x(), 0, -spec.footHeight()};
        double[] x = new double[strips];
        double[] y = new double[strips];
        double[] z = new double[strips];
        for (int i = 0; i < strips; i++) {
            double[] at = {spec.x(), 0, -spec.footHeight() - wing.stripHeight(i)};
            double[] flow = toBody(apparent(level(at)));
            x[i] = flow[0];
            y[i] = flow[1];
            z[i] = flow[2];
        }
        WingSetting setting = new WingSetting(
                tack * state.get(Variable.SHEET),
                tack * state.get(Variable.CAMBER),
                tack * state.get(Variable.TWIST),
                state.get(Variable.TWIST_MID_RATIO));
        double roll = tack * state.get(Variable.HEEL);
        WingAnswer answer = wing.placedAt(roll, -level(step)[2]).solve(new StripAir(x, y, z, air), setting);
        if (!(answer instanceof WingSolved solved)) {
            throw new IllegalStateException("the wing has no answer here");
        }
        WingForce force = solved.force();
        addBody(force.x(), force.y(), force.z(), step);
        double[] couple = rotate(new double[] {force.k(), force.m(), force.n()});
        for (int i = 0; i < 3; i++) {
            sum[3 + i] += couple[i];
        }
    }

    private void foils() {
        Side windward = conditions.windward();
        Side leeward = windward == Side.STARBOARD ? Side.PORT : Side.STARBOARD;
        side(leeward, true, 1);
        side(windward, conditions.foils() == FoilSet.BOTH_DOWN, -1);
    }

    /** Foils of one hull; its elevator's incidence is the mean plus or less the differential. */
    private void side(Side side, boolean mainDown, int differentialSign) {
        MainFoilModel main = new MainFoilModel(boat.mainFoil(), side, water);
        RudderModel rudder = new RudderModel(boat.rudder(), 0.5 * boat.hulls().spacing(), side, water);
        FoilLoad load = new FoilLoad();
        double[] strutEnd = {
            rudder.strut().x(), rudder.strut().y(), rudder.strut().endZ()
        };
        double[] elevatorAt = {
            rudder.elevator().x(), rudder.elevator().y(), rudder.elevator().z()
        };
        double aft = -boat.rudder().x();
        double sidewash = 0;
        double downwash = 0;
        if (mainDown) {
            Flow atShaft = flow(
                    new double[] {
                        main.shaft().x(), main.shaft().y(), main.shaft().endZ()
                    },
                    0,
                    0);
            main.shaft(atShaft, load);
            add(load);
            sidewash = main.sidewash(atShaft, load, aft, strutEnd[1]);
            Flow atTip = flow(
                    new double[] {main.tip().x(), main.tip().y(), main.tip().z()}, 0, 0);
            main.tip(atTip, state.get(Variable.MAIN_RAKE), load);
            add(load);
            downwash = main.downwash(atTip, load, aft, level(elevatorAt)[2]);
        }
        // Positive rudder in the state turns the bow from the wind; in the model, to starboard.
        double rudderAngle = -tack * state.get(Variable.RUDDER);
        rudder.strut(flow(strutEnd, sidewash, 0), rudderAngle, load);
        add(load);
        double incidence = state.get(Variable.ELEVATOR) + differentialSign * state.get(Variable.ELEVATOR_DIFFERENTIAL);
        rudder.elevator(flow(elevatorAt, sidewash, downwash), rudderAngle, incidence, load);
        add(load);
    }

    private Flow flow(double[] body, double side, double down) {
        double[] past = toBody(new double[] {-state.get(Variable.BOAT_SPEED), 0, 0});
        return new Flow(past[0], past[1] + side, past[2] + down, level(body)[2]);
    }

    private void add(FoilLoad load) {
        addBody(load.forceX(), load.forceY(), load.forceZ(), new double[] {load.pointX(), load.pointY(), load.pointZ()
        });
    }

    private void hulls() {
        double mass = boat.platform().mass() + spec.mass() + boat.crew().mass();
        double centre = (boat.platform().mass() * boat.platform().x()
                        + spec.mass() * spec.x()
                        + boat.crew().mass() * boat.crew().x())
                / mass;
        HullModel model = new HullModel(boat.hulls(), centre, water);
        double half = 0.5 * boat.hulls().spacing();
        double port = level(new double[] {0, -half, 0})[2];
        double starboard = level(new double[] {0, half, 0})[2];
        hull(model, -half, port, starboard);
        hull(model, half, starboard, port);
    }

    private void hull(HullModel model, double y, double own, double other) {
        HullLoad load = new HullLoad();
        model.load(state.get(Variable.BOAT_SPEED), state.get(Variable.PITCH), own, other, load);
        double[] at = level(new double[] {load.buoyancyX(), y, load.dragZ()});
        addLevel(new double[] {-load.drag(), 0, -load.buoyancy()}, at);
    }

    private void addBody(double fx, double fy, double fz, double[] body) {
        addLevel(rotate(new double[] {fx, fy, fz}), level(body));
    }

    private void addLevel(double[] f, double[] at) {
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            int k = (i + 2) % 3;
            sum[i] += f[i];
            sum[3 + i] += at[j] * f[k] - at[k] * f[j];
        }
    }

    /** A point of the body in level axes: turned, and lifted by the ride height. */
    private double[] level(double[] body) {
        double[] turned = rotate(body);
        turned[2] -= state.get(Variable.RIDE_HEIGHT);
        return turned;
    }

    private double[] rotate(double[] v) {
        double[] r = new double[3];
        for (int i = 0; i < 3; i++) {
            r[i] = toLevel[i][0] * v[0] + toLevel[i][1] * v[1] + toLevel[i][2] * v[2];
        }
        return r;
    }

    private double[] toBody(double[] v) {
        double[] r = new double[3];
        for (int i = 0; i < 3; i++) {
            r[i] = toLevel[0][i] * v[0] + toLevel[1][i] * v[1] + toLevel[2][i] * v[2];
        }
        return r;
    }

    private static double[][] aboutX(double a) {
        return new double[][] {{1, 0, 0}, {0, Math.cos(a), -Math.sin(a)}, {0, Math.sin(a), Math.cos(a)}};
    }

    private static double[][] aboutY(double a) {
        return new double[][] {{Math.cos(a), 0, Math.sin(a)}, {0, 1, 0}, {-Math.sin(a), 0, Math.cos(a)}};
    }

    private static double[][] aboutZ(double a) {
        return new double[][] {{Math.cos(a), -Math.sin(a), 0}, {Math.sin(a), Math.cos(a), 0}, {0, 0, 1}};
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] c = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    c[i][j] += a[i][k] * b[k][j];
                }
            }
        }
        return c;
    }
}
