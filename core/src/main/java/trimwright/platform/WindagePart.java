package trimwright.platform;

import trimwright.air.AirState;
import trimwright.boat.Windage;

/**
 * Air drag of platform and crew: CdA(b) = CdA ahead cos^2 b + CdA abeam sin^2 b along the apparent wind at its height, b
 * its angle from the bow (form common practice, no source).
 */
final class WindagePart {
    /** Keeps the direction finite in still air (m/s), chosen. */
    private static final double STILL = 1e-12;

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
        double speed = Math.sqrt(x * x + y * y) + STILL;
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

    /** First-order change with one variable, per unit of it. */
    void addChange(ForceSum sum, SailingState state, Conditions conditions, Pose pose, PoseChange change, Variable by) {
        double depth = pose.depth(windage.x(), 0, -windage.height());
        double byDepth = change.depth(windage.x(), 0, -windage.height());
        double wind = conditions.wind().speedAt(-depth);
        double byWind = conditions.wind().slopeAt(-depth) * -byDepth;
        AirFlow flow = new AirFlow(state, pose, conditions);
        AirFlowChange flowChange = new AirFlowChange(flow, change, conditions, by);
        double x = flow.levelX(wind);
        double y = flow.levelY(wind);
        double byX = flowChange.levelX(wind, byWind);
        double byY = flowChange.levelY(wind, byWind);
        double speed = Math.sqrt(x * x + y * y) + STILL;
        double bySpeed = (x * byX + y * byY) / speed;
        double over = windage.areaAhead() * x * x + windage.areaAbeam() * y * y;
        double byOver = 2 * (windage.areaAhead() * x * byX + windage.areaAbeam() * y * byY);
        double pull = 0.5 * air.density() * over / speed;
        double byPull = 0.5 * air.density() * (byOver - over / speed * bySpeed) / speed;
        double byAhead = byPull * x + pull * byX;
        double byAbeam = byPull * y + pull * byY;
        sum.add(
                change.bodyX(pull * x, byAhead),
                change.bodyY(pull * x, pull * y, byAhead, byAbeam),
                change.bodyZ(pull * x, pull * y, byAhead, byAbeam),
                windage.x(),
                0,
                -windage.height());
    }
}
