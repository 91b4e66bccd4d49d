package trimwright.motion;

import trimwright.boat.Boat;
import trimwright.boat.WingSpec;

/**
 * Masses and moments of inertia from the boat file's masses and places: platform and wing where they are, the crew where it
 * stands. What the file does not say of the spread of the platform's mass is chosen and stands here. For comparison: a
 * published-plausible set for a craft of this size has 78,000, 74,000 and 54,000 kg m2 in roll, pitch and yaw.
 */
final class Inertia {
    /** Radius of gyration of the platform about its length axis over half the hulls' spacing (-): chosen. */
    private static final double ROLL_GYRATION = 0.8;
    /** Radius of gyration of the platform along its length over the length overall (-): chosen. */
    private static final double LENGTH_GYRATION = 0.25;

    private final double platform;
    private final double wing;
    private final double crew;
    private final double mass;
    private final double x;
    private final double z;
    private final double platformX;
    private final double platformZ;
    private final double wingX;
    private final double wingZ;
    private final double crewX;
    private final double crewZ;
    private final double across;
    private final double along;
    private final double wingOwn;

    Inertia(Boat boat, WingSpec spec) {
        platform = boat.platform().mass();
        wing = spec.mass();
        crew = boat.crew().mass();
        mass = platform + wing + crew;
        x = (platform * boat.platform().x()
                        + wing * spec.x()
                        + crew * boat.crew().x())
                / mass;
        double wingHeight = spec.footHeight() + spec.massHeight();
        z = -(platform * boat.platform().height()
                        + wing * wingHeight
                        + crew * boat.crew().height())
                / mass;
        platformX = boat.platform().x() - x;
        platformZ = -boat.platform().height() - z;
        wingX = spec.x() - x;
        wingZ = -wingHeight - z;
        crewX = boat.crew().x() - x;
        crewZ = -boat.crew().height() - z;
        across = platform * StrictMath.pow(ROLL_GYRATION * boat.hulls().spacing() / 2, 2);
        along = platform * StrictMath.pow(LENGTH_GYRATION * boat.hulls().lengthOverall(), 2);
        wingOwn = wing * spec.span() * spec.span() / 12;
    }

    /** All that moves, without water (kg). */
    double mass() {
        return mass;
    }

    /** Inertia about the centre of mass, body axes, for a place of the crew to starboard (m). */
    Tensor about(double place) {
        double y = -y(place);
        double crewY = place + y;
        double fixed = platform + wing;
        return new Tensor(
                across
                        + wingOwn
                        + fixed * y * y
                        + platform * platformZ * platformZ
                        + wing * wingZ * wingZ
                        + crew * (crewY * crewY + crewZ * crewZ),
                along
                        + wingOwn
                        + platform * (platformX * platformX + platformZ * platformZ)
                        + wing * (wingX * wingX + wingZ * wingZ)
                        + crew * (crewX * crewX + crewZ * crewZ),
                across
                        + along
                        + fixed * y * y
                        + platform * platformX * platformX
                        + wing * wingX * wingX
                        + crew * (crewX * crewX + crewY * crewY),
                (platform * platformX + wing * wingX) * y + crew * crewX * crewY,
                platform * platformX * platformZ + wing * wingX * wingZ + crew * crewX * crewZ,
                (platform * platformZ + wing * wingZ) * y + crew * crewY * crewZ);
    }

    /** Centre of mass, body axes (m). */
    double x() {
        return x;
    }

    /** Centre of mass to starboard (m), for a place of the crew (m). */
    double y(double place) {
        return crew * place / mass;
    }

    /** Centre of mass, body axes, down: negative (m). */
    double z() {
        return z;
    }
}
