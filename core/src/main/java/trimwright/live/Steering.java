package trimwright.live;

import trimwright.units.Angles;

/**
 * Whether the boat turns, from its heading ten times a second: from when the bow goes round faster than a driver steers for
 * gusts and waves, until it has gone round slower than a phase allows for two seconds.
 */
final class Steering {
    /** Rates are over two seconds (chosen: longer than a steering wobble in waves). */
    private static final int LOOK_BACK = 20;

    /** Rate at which a turn begins (rad/s): that at which wind readings are left out. */
    private static final double TURNS = Math.toRadians(5);

    /** Rate below which she goes straight (rad/s), that of a phase. */
    private static final double STRAIGHT = Math.toRadians(3);

    private final double[] headings = new double[LOOK_BACK + 1];
    private int count;
    private int straightFor;
    private boolean turning;

    /** Takes the next heading (rad); NaN where it is not known. */
    void add(double heading) {
        if (Double.isNaN(heading)) {
            count = 0;
            turning = false;
            return;
        }
        if (count > LOOK_BACK) {
            System.arraycopy(headings, 1, headings, 0, LOOK_BACK);
            count--;
        }
        headings[count++] = heading;
        if (count <= LOOK_BACK) {
            return;
        }
        double rate = Math.abs(Angles.difference(heading, headings[0])) / (LOOK_BACK / 10.0);
        straightFor = rate < STRAIGHT ? straightFor + 1 : 0;
        turning = rate > TURNS || (turning && straightFor < LOOK_BACK);
    }

    boolean isTurning() {
        return turning;
    }
}
