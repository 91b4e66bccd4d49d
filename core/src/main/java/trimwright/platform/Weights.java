package trimwright.platform;

import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.units.Units;

/** Weights of platform, wing and crew. The crew moves to windward. */
final class Weights {
    private final Boat boat;
    private final WingSpec wing;

    Weights(Boat boat, WingSpec wing) {
        this.boat = boat;
        this.wing = wing;
    }

    /** All together (N). */
    double total() {
        return Units.G * (boat.platform().mass() + wing.mass() + boat.crew().mass());
    }

    /** Centre of all, forward of the origin (m). */
    double centreX() {
        double moment = boat.platform().mass() * boat.platform().x()
                + wing.mass() * wing.x()
                + boat.crew().mass() * boat.crew().x();
        return moment * Units.G / total();
    }

    void addTo(ForceSum sum, SailingState state, Conditions conditions, Pose pose) {
        add(
                sum,
                pose,
                boat.platform().mass(),
                boat.platform().x(),
                0,
                boat.platform().height());
        add(sum, pose, wing.mass(), wing.x(), 0, wing.footHeight() + wing.massHeight());
        double place = conditions.windward().sign() * state.get(Variable.CREW_PLACE);
        add(sum, pose, boat.crew().mass(), boat.crew().x(), place, boat.crew().height());
    }

    /** First-order change with one variable, per unit of it. */
    void addChange(ForceSum sum, Conditions conditions, Pose pose, PoseChange change, SailingState state, Variable by) {
        addChange(
                sum,
                change,
                boat.platform().mass(),
                boat.platform().x(),
                0,
                boat.platform().height());
        addChange(sum, change, wing.mass(), wing.x(), 0, wing.footHeight() + wing.massHeight());
        double place = conditions.windward().sign() * state.get(Variable.CREW_PLACE);
        addChange(
                sum,
                change,
                boat.crew().mass(),
                boat.crew().x(),
                place,
                boat.crew().height());
        if (by == Variable.CREW_PLACE) {
            double weight = Units.G * boat.crew().mass();
            sum.addMoved(
                    weight * pose.downX(),
                    weight * pose.downY(),
                    weight * pose.downZ(),
                    0,
                    conditions.windward().sign(),
                    0);
        }
    }

    private static void addChange(ForceSum sum, PoseChange change, double mass, double x, double y, double height) {
        double weight = Units.G * mass;
        sum.add(weight * change.downX(), weight * change.downY(), weight * change.downZ(), x, y, -height);
    }

    private static void add(ForceSum sum, Pose pose, double mass, double x, double y, double height) {
        double weight = Units.G * mass;
        sum.add(weight * pose.downX(), weight * pose.downY(), weight * pose.downZ(), x, y, -height);
    }
}
