package trimwright.target;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.FoilSpec;
import trimwright.boat.MainFoil;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Platform;
import trimwright.platform.Variable;
import trimwright.units.Units;
import trimwright.water.WaterState;

/**
 * Top speed moves as cavitation and friction ask. Warm water does two things, which are looked at apart: it boils sooner, and it rubs
 * less; in sum the demo boat gains.
 */
class TopSpeedPropertyTest {
    private static final double WIND = Units.fromKnots(26);
    private static final double ANGLE = Units.fromDegrees(115);

    /** Larger than what the trim that is shown may lie under the best (m/s): 0.05 per cent of it. */
    private static final double TOLD = 0.015;

    private static final Boat BOAT = Whimbrel14.boat();
    private static final WaterState SEA = WaterState.sea(288.15);
    private static final Target DEMO = target(BOAT, SEA, Map.of());

    private static Target target(Boat boat, WaterState water, Map<Variable, Double> held) {
        Platform platform = new Platform(boat, boat.getWing("tall"), AirState.STANDARD, water);
        return new TargetFinder(platform, held)
                .pointsAt(WIND, List.of(ANGLE)).stream()
                        .filter(point -> point.mode() == TargetMode.ANGLE && point.isFoiling() && point.isSolved())
                        .findFirst()
                        .orElseThrow()
                        .getTarget();
    }

    private static double speed(Boat boat, WaterState water) {
        return target(boat, water, Map.of()).boatSpeed();
    }

    /** The demo boat with a tip of that chord and thickness. */
    private static Boat withTip(double chordTimes, double thicknessRatio) {
        MainFoil foil = BOAT.mainFoil();
        MainFoil other = new MainFoil(
                foil.shaftLength(),
                foil.shaftChord(),
                foil.shaftThicknessRatio(),
                foil.tipSpan(),
                chordTimes * foil.tipChord(),
                thicknessRatio,
                foil.tipDesignLiftCoefficient(),
                foil.tipDihedral(),
                foil.yJunction(),
                foil.yLift(),
                foil.rakeMin(),
                foil.rakeMax(),
                foil.immersionMin());
        FoilSpec set = new FoilSpec("other", other, BOAT.rudder());
        return new Boat(
                BOAT.name(),
                BOAT.title(),
                BOAT.hulls(),
                BOAT.platform(),
                BOAT.crew(),
                BOAT.wings(),
                set,
                List.of(set),
                BOAT.windage(),
                BOAT.limits(),
                BOAT.windSensor(),
                BOAT.antenna(),
                BOAT.handling());
    }

    @Test
    void cavitationHoldsTheDemoBoat() {
        assertTrue(
                DEMO.limits().contains(TargetLimit.CAVITATION_MAIN),
                DEMO.limits().toString());
    }

    @Test
    void waterThatBoilsSoonerIsSlowerAndWaterThatRubsLessIsFaster() {
        WaterState boilsSooner = new WaterState(SEA.density(), SEA.kinematicViscosity(), 10 * SEA.vapourPressure());
        WaterState rubsLess = new WaterState(SEA.density(), 0.8 * SEA.kinematicViscosity(), SEA.vapourPressure());
        assertTrue(speed(BOAT, boilsSooner) < DEMO.boatSpeed() - TOLD);
        assertTrue(speed(BOAT, rubsLess) > DEMO.boatSpeed() + TOLD);
        assertTrue(speed(BOAT, WaterState.sea(301.15)) > speed(BOAT, WaterState.sea(278.15)) + TOLD);
    }

    @Test
    void deeperIsFasterWhereCavitationHolds() {
        double deep = target(BOAT, SEA, Map.of(Variable.RIDE_HEIGHT, 0.5)).boatSpeed();
        double high = target(BOAT, SEA, Map.of(Variable.RIDE_HEIGHT, 1.2)).boatSpeed();
        assertTrue(deep > high + TOLD, deep + " and " + high);
    }

    @Test
    void aThinnerTipIsFasterAThickerOneSlower() {
        double ratio = BOAT.mainFoil().tipThicknessRatio();
        assertTrue(speed(withTip(1, 0.8 * ratio), SEA) > DEMO.boatSpeed() + TOLD);
        assertTrue(speed(withTip(1, 1.2 * ratio), SEA) < DEMO.boatSpeed() - TOLD);
    }

    /** More area rubs more; much less area asks for so much lift that it cavitates. */
    @Test
    void moreAreaIsSlowerAndSoIsMuchLess() {
        double ratio = BOAT.mainFoil().tipThicknessRatio();
        assertTrue(speed(withTip(1.3, ratio), SEA) < DEMO.boatSpeed() - TOLD);
        assertTrue(speed(withTip(0.7, ratio), SEA) < DEMO.boatSpeed() - TOLD);
    }
}
