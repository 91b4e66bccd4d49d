package trimwright.platform;

import trimwright.boat.Side;

/** First-order change of a {@link Pose} with one variable of its state, per unit of that variable. */
final class PoseChange {
    private final Pose pose;
    private double sinRoll;
    private double cosRoll;
    private double sinPitch;
    private double cosPitch;
    private double rideHeight;
    private double ahead;
    private double abeam;

    PoseChange(Pose pose, SailingState state, Side windward, Variable by) {
        this.pose = pose;
        int side = windward.sign();
        double speed = state.get(Variable.BOAT_SPEED);
        double leeway = state.get(Variable.LEEWAY);
        switch (by) {
            case BOAT_SPEED -> {
                ahead = StrictMath.cos(leeway);
                abeam = -side * StrictMath.sin(leeway);
            }
            case LEEWAY -> {
                ahead = -speed * StrictMath.sin(leeway);
                abeam = -side * speed * StrictMath.cos(leeway);
            }
            case HEEL -> {
                sinRoll = side * pose.cosRoll;
                cosRoll = -side * pose.sinRoll;
            }
            case PITCH -> {
                sinPitch = pose.cosPitch;
                cosPitch = -pose.sinPitch;
            }
            case RIDE_HEIGHT -> rideHeight = 1;
            case RUDDER,
                    MAIN_RAKE,
                    ELEVATOR,
                    SHEET,
                    CAMBER,
                    TWIST,
                    TWIST_MID_RATIO,
                    ELEVATOR_DIFFERENTIAL,
                    CREW_PLACE,
                    TRUE_WIND_ANGLE -> {
                // These do not move the boat.
            }
        }
    }

    /** Of the depth of a point in body axes (m). */
    double depth(double x, double y, double z) {
        return -x * sinPitch
                + (y * sinRoll + z * cosRoll) * pose.cosPitch
                + (y * pose.sinRoll + z * pose.cosRoll) * cosPitch
                - rideHeight;
    }

    /** Of the boat's velocity ahead (m/s). */
    double ahead() {
        return ahead;
    }

    /** Of the boat's velocity to starboard (m/s). */
    double abeam() {
        return abeam;
    }

    /** Of a horizontal vector's body component x, the vector and its own change given in level axes. */
    double bodyX(double levelX, double byX) {
        return byX * pose.cosPitch + levelX * cosPitch;
    }

    /** The same of component y. */
    double bodyY(double levelX, double levelY, double byX, double byY) {
        return byX * pose.sinPitch * pose.sinRoll
                + levelX * (sinPitch * pose.sinRoll + pose.sinPitch * sinRoll)
                + byY * pose.cosRoll
                + levelY * cosRoll;
    }

    /** The same of component z. */
    double bodyZ(double levelX, double levelY, double byX, double byY) {
        return byX * pose.sinPitch * pose.cosRoll
                + levelX * (sinPitch * pose.cosRoll + pose.sinPitch * cosRoll)
                - byY * pose.sinRoll
                - levelY * sinRoll;
    }

    /** Of straight down in body axes: x. */
    double downX() {
        return -sinPitch;
    }

    /** Of straight down in body axes: y. */
    double downY() {
        return cosPitch * pose.sinRoll + pose.cosPitch * sinRoll;
    }

    /** Of straight down in body axes: z. */
    double downZ() {
        return cosPitch * pose.cosRoll + pose.cosPitch * cosRoll;
    }
}
