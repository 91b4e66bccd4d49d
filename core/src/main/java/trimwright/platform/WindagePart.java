package trimwright.platform;

import trimwright.air.AirState;
import trimwright.boat.Windage;

/**
 * Air drag of platform and crew: CdA(b) = CdA ahead cos^2 b + CdA abeam sin^2 b along the apparent wind at its height, b
 * its angle from the bow (form common practice, no source).
 */
final class WindagePart {
    private final Windage windage;
    private final AirState air;

    WindagePart(Windage windage, AirState air) {
        this.windage = windage;
        this.air = air;
    }

    void addTo(ForceSum sum, SailingState state, Conditions conditions, Pose pose) {
        double height = -pose.depth(windage.x(), 0, -windage.height());
        double wind = conditions.wind().speedAt(height);
        AirFlow flow = new AirFlow(state, pose, conditions);
        double x = flow.levelX(wind);
        double y = flow.levelY(wind);
        double speed = Math.sqrt(x * x + y * y) + 1e-12;
        double area = (windage.areaAhead() * x * x + windage.areaAbeam() * y * y) / (speed * speed);
        double pull = 0.5 * air.density() * speed * area;
        double ahead = pull * x;
        double abeam = pull * y;
        sum.add(
                pose.bodyX(ahead),
                pose.bodyY(ahead, abeam),
                pose.bodyZ(ahead, abeam),
                windage.x(),
                0,
                -windage.height());
    }
}
