package trimwright.motion;

import trimwright.boat.Boat;
import trimwright.boat.WingSpec;

/**
 * Masses and moments of inertia from the boat file's masses and places. What the file does not say of the spread of the
 * platform's mass is chosen and stands here. For comparison: a published-plausible set for a craft of this size has 78,000,
 * 74,000 and 54,000 kg m2 in roll, pitch and yaw.
 */
final class Inertia {
    /** Radius of gyration of the platform about its length axis over half the hulls' spacing (-): chosen. */
    private static final double ROLL_GYRATION = 0.8;
    /** Radius of gyration of the platform along its length over the length overall (-): chosen. */
    private static final double LENGTH_GYRATION = 0.25;

    private final double mass;
    private final double crewMass;
    private final double fixedX;
    private final double fixedZ;
    private final double roll;
    private final double pitch;
    private final double yaw;

    Inertia(Boat boat, WingSpec wing) {
        double platform = boat.platform().mass();
        crewMass = boat.crew().mass();
        mass = platform + wing.mass() + crewMass;
        double wingHeight = wing.footHeight() + wing.massHeight();
        fixedX = (platform * boat.platform().x()
                        + wing.mass() * wing.x()
                        + crewMass * boat.crew().x())
                / mass;
        double height = (platform * boat.platform().height()
                        + wing.mass() * wingHeight
                        + crewMass * boat.crew().height())
                / mass;
        fixedZ = -height;
        double halfSpacing = boat.hulls().spacing() / 2;
        double acrossPlatform = StrictMath.pow(ROLL_GYRATION * halfSpacing, 2);
        double crewOut = StrictMath.pow(boat.crew().yMax(), 2);
        roll = platform * (acrossPlatform + StrictMath.pow(boat.platform().height() - height, 2))
                + wing.mass() * (wing.span() * wing.span() / 12 + StrictMath.pow(wingHeight - height, 2))
                + crewMass * (crewOut + StrictMath.pow(boat.crew().height() - height, 2));
        double alongPlatform = StrictMath.pow(LENGTH_GYRATION * boat.hulls().lengthOverall(), 2)
                + StrictMath.pow(boat.platform().x() - fixedX, 2);
        pitch = platform * (alongPlatform + StrictMath.pow(boat.platform().height() - height, 2))
                + wing.mass()
                        * (wing.span() * wing.span() / 12
                                + StrictMath.pow(wingHeight - height, 2)
                                + StrictMath.pow(wing.x() - fixedX, 2))
                + crewMass
                        * (StrictMath.pow(boat.crew().height() - height, 2)
                                + StrictMath.pow(boat.crew().x() - fixedX, 2));
        yaw = platform * (acrossPlatform + alongPlatform)
                + wing.mass() * StrictMath.pow(wing.x() - fixedX, 2)
                + crewMass * (crewOut + StrictMath.pow(boat.crew().x() - fixedX, 2));
    }

    /** All that moves, without water (kg). */
    double mass() {
        return mass;
    }

    /** About the length axis through the centre of mass (kg m2). */
    double roll() {
        return roll;
    }

    /** About the athwartships axis through the centre of mass (kg m2). */
    double pitch() {
        return pitch;
    }

    /** About the vertical through the centre of mass (kg m2). */
    double yaw() {
        return yaw;
    }

    /** Centre of mass, body axes (m). */
    double x() {
        return fixedX;
    }

    /** Centre of mass to starboard (m), for a place of the crew (m). */
    double y(double crew) {
        return crewMass * crew / mass;
    }

    /** Centre of mass, body axes, down: negative (m). */
    double z() {
        return fixedZ;
    }
}
