package trimwright.calibration;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.air.ApparentWind;
import trimwright.units.Angles;
import trimwright.wind.Attitude;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;
import trimwright.wind.WindTriangle;

/**
 * Means over some seconds of straight sailing, as read.
 *
 * @param time of its middle since the clock's start (s)
 * @param upwind whether the bow pointed into the wind
 * @param lies heading and roll
 * @param felt apparent wind
 * @param moves of the boat
 * @param trim of the wing
 */
record Block(double time, boolean upwind, Lies lies, Felt felt, Moves moves, Trim trim) {
    /** Long against gusts and the lag of a vane, short against a leg (s): chosen. */
    static final double LENGTH = 20;

    /** Share of a block that must be known and straight (chosen). */
    private static final double ENOUGH = 0.5;

    /** As for phases (rad/s). */
    private static final double STRAIGHT = Math.toRadians(3);

    /** Slower boats, and fainter winds, say nothing (m/s, chosen). */
    private static final double SLOWEST = 1;

    /**
     * @param heading (rad)
     * @param roll (rad)
     * @param rideHeight (m), 0 where not logged
     */
    record Lies(double heading, double roll, double rideHeight) {}

    /**
     * @param north where it comes from, by the heading as read (m/s)
     * @param east the same
     * @param speed mean (m/s)
     * @param angle from the bow (rad)
     * @param down wind at the reference height over that at the sensor (-)
     */
    record Felt(double north, double east, double speed, double angle, double down) {
        int side() {
            return angle < 0 ? -1 : 1;
        }
    }

    /**
     * @param north over ground (m/s), NaN where not logged
     * @param east the same
     * @param water speed through it (m/s), NaN where not logged
     */
    record Moves(double north, double east, double water) {
        boolean overGround() {
            return !Double.isNaN(north);
        }

        double speed() {
            return overGround() ? StrictMath.hypot(north, east) : water;
        }
    }

    /** Signed, as read (rad), NaN where not logged. */
    record Trim(double camber, double sheet, double twist) {}

    static List<Block> of(WindTrack track) {
        int length = track.clock().steps(LENGTH);
        List<Block> blocks = new ArrayList<>();
        for (int from = 0; from + length <= track.size(); from += length) {
            Block block = new Sums(track).over(from, from + length);
            if (block != null) {
                blocks.add(block);
            }
        }
        return blocks;
    }

    /** Sums of one block. */
    private static final class Sums {
        private final WindTrack track;
        private final double[] felt = new double[6];
        private final double[] moved = new double[2];
        private final double[] lies = new double[4];
        private int count;
        private int overGround;

        Sums(WindTrack track) {
            this.track = track;
        }

        @Nullable
        Block over(int from, int to) {
            for (int i = from; i < to; i++) {
                add(i);
            }
            if (count < ENOUGH * (to - from)) {
                return null;
            }
            double angle = StrictMath.atan2(felt[3], felt[2]);
            double heading = StrictMath.atan2(lies[1], lies[0]);
            double wind = StrictMath.atan2(felt[5], felt[4]);
            boolean knowsGround = overGround >= ENOUGH * count;
            double time = track.clock().seconds((from + to) / 2);
            return new Block(
                    time,
                    StrictMath.cos(Angles.difference(wind, heading)) > 0,
                    new Lies(heading, lies[2] / count, or0(track.mean(Quantity.RIDE_HEIGHT, from, to))),
                    new Felt(
                            felt[0] / count,
                            felt[1] / count,
                            StrictMath.hypot(felt[2], felt[3]) / count,
                            angle,
                            lies[3] / count),
                    new Moves(
                            knowsGround ? moved[0] / overGround : Double.NaN,
                            knowsGround ? moved[1] / overGround : Double.NaN,
                            track.mean(Quantity.STW, from, to)),
                    new Trim(
                            track.mean(Quantity.CAMBER, from, to),
                            track.mean(Quantity.SHEET, from, to),
                            track.mean(Quantity.TWIST, from, to)));
        }

        private void add(int i) {
            double heading = track.get(Quantity.HEADING, i);
            double speed = track.get(Quantity.SPEED, i);
            double tws = track.get(Quantity.RAW_TWS, i);
            double twd = track.get(Quantity.RAW_TWD, i);
            double rate = track.get(Quantity.RATE_OF_TURN, i);
            double roll = or0(track.get(Quantity.ROLL, i));
            ApparentWind wind = WindTriangle.level(
                    new ApparentWind(track.get(Quantity.AWS, i), track.get(Quantity.AWA, i)),
                    new Attitude(roll, or0(track.get(Quantity.PITCH, i))));
            boolean known = speed > SLOWEST && Math.abs(rate) < STRAIGHT;
            if (!known || Double.isNaN(heading + tws + twd + wind.speed() + wind.angle())) {
                return;
            }
            double from = heading + wind.angle();
            double north = wind.speed() * StrictMath.cos(from);
            double east = wind.speed() * StrictMath.sin(from);
            double course = track.get(Quantity.COURSE, i);
            double atSensor =
                    StrictMath.hypot(north - speed * StrictMath.cos(course), east - speed * StrictMath.sin(course));
            if (!(atSensor > SLOWEST)) {
                return;
            }
            felt[0] += north;
            felt[1] += east;
            felt[2] += wind.speed() * StrictMath.cos(wind.angle());
            felt[3] += wind.speed() * StrictMath.sin(wind.angle());
            felt[4] += StrictMath.cos(twd);
            felt[5] += StrictMath.sin(twd);
            lies[0] += StrictMath.cos(heading);
            lies[1] += StrictMath.sin(heading);
            lies[2] += roll;
            lies[3] += tws / atSensor;
            count++;
            double sog = track.get(Quantity.SOG, i);
            double cog = track.get(Quantity.COG, i);
            if (!Double.isNaN(sog + cog)) {
                moved[0] += sog * StrictMath.cos(cog);
                moved[1] += sog * StrictMath.sin(cog);
                overGround++;
            }
        }

        private static double or0(double value) {
            return Double.isNaN(value) ? 0 : value;
        }
    }
}
