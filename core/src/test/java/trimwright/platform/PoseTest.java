package trimwright.platform;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import trimwright.boat.Side;

class PoseTest {
    private static final SailingState HEELED = SailingState.upright()
            .with(Variable.BOAT_SPEED, 10)
            .with(Variable.LEEWAY, 0.1)
            .with(Variable.HEEL, 0.2)
            .with(Variable.PITCH, 0.1)
            .with(Variable.RIDE_HEIGHT, 0.5);

    @Test
    void windwardHeelPutsTheWindwardSideDeeper() {
        Pose pose = Pose.of(HEELED, Side.STARBOARD);
        assertTrue(pose.depth(0, 4, 0) > pose.depth(0, -4, 0));
    }

    @Test
    void aBowThatIsUpLiftsTheBow() {
        Pose pose = Pose.of(HEELED, Side.STARBOARD);
        assertTrue(pose.depth(7, 0, 0) < pose.depth(-7, 0, 0));
    }

    @Test
    void leewayDriftsAwayFromTheWind() {
        assertTrue(Pose.of(HEELED, Side.STARBOARD).abeam() < 0);
        assertTrue(Pose.of(HEELED, Side.PORT).abeam() > 0);
    }

    @Test
    void turningIntoBodyAxesAndBackGivesTheVectorAgain() {
        Pose pose = Pose.of(HEELED, Side.PORT);
        double x = pose.bodyX(3);
        double y = pose.bodyY(3, -2);
        double z = pose.bodyZ(3, -2);
        assertEquals(3, pose.levelX(x, y, z), 1e-14);
        assertEquals(-2, pose.levelY(y, z), 1e-14);
        assertEquals(0, x * pose.downX() + y * pose.downY() + z * pose.downZ(), 1e-14);
    }

    @Test
    void depthIsTheWayDownLessTheRideHeight() {
        Pose pose = Pose.of(HEELED, Side.PORT);
        double down = 1.5 * pose.downX() - 2 * pose.downY() + 0.7 * pose.downZ();
        assertEquals(down - 0.5, pose.depth(1.5, -2, 0.7), 1e-14);
    }
}
