package trimwright.compare;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.course.PlanePoint;
import trimwright.segment.BowTrack;
import trimwright.segment.OnCourse;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * How much wind other boats took from a boat, by their tracks. What a wing left in the air drifts with the wind from where
 * it was left. There the air lacks the momentum that the wing took from it, spread like a bell over a disc whose width
 * grows evenly with the way run (form and first width of Bastankhah and Porte-Agel 2014, in their far wake, where the loss
 * is small; docs/sources.md). The wing and its image in the sea act on a disc of twice the wing's height; its force is that
 * of the target in the other boat's wind. Leaves out how trails bend with shifts and what is left in turns.
 */
public final class OthersAir {
    /** Growth of the bell's standard deviation over the way run (-), chosen: air over the sea, turbulence of 8 %. */
    private static final double GROWTH = 0.034;

    /** First standard deviation over the disc's diameter (-): 0.2 sqrt(beta) with beta near 1 for a small loss. */
    private static final double FIRST_WIDTH = 0.2;

    /** Older trails are not followed (s), chosen: by then they have spread over more than a boat's own wake is worth. */
    private static final double OLDEST = 60;

    private static final double EVERY = 1.0;

    private final WindTrack track;
    private final BowTrack bow;
    private final List<OnCourse.Neighbour> others;
    private final TargetBook book;
    private final double height;

    /** @param height of the wing's head above the water (m) */
    public OthersAir(WindTrack track, BowTrack bow, List<OnCourse.Neighbour> others, TargetBook book, double height) {
        this.track = track;
        this.bow = bow;
        this.others = List.copyOf(others);
        this.book = book;
        this.height = height;
    }

    /** Nothing known of others: 1 at each of so many instants. */
    public static double[] unknown(int size) {
        double[] clear = new double[size];
        Arrays.fill(clear, 1);
        return clear;
    }

    /** Wind speed without other boats over that with them (-) at each instant, 1 where nothing is known. */
    public double[] clearWind() {
        double[] clear = unknown(track.size());
        int every = track.clock().steps(EVERY);
        for (int i = 0; i < clear.length; i += every) {
            Arrays.fill(clear, i, Math.min(clear.length, i + every), clearWind(i));
        }
        return clear;
    }

    private double clearWind(int i) {
        PlanePoint here = bow.at(i);
        double speed = track.get(Quantity.TWS, i);
        double from = track.get(Quantity.TWD, i);
        if (here == null || !(speed > 1) || Double.isNaN(from)) {
            return 1;
        }
        double north = -speed * StrictMath.cos(from);
        double east = -speed * StrictMath.sin(from);
        double lostNorth = 0;
        double lostEast = 0;
        for (OnCourse.Neighbour other : others) {
            double @Nullable [] change = change(other, i, here, north, east);
            if (change != null) {
                lostNorth -= change[0];
                lostEast -= change[1];
            }
        }
        return StrictMath.hypot(north + lostNorth, east + lostEast) / speed;
    }

    /** What the other boat's trail adds to the wind here (m/s, north and east), null where it does not come near. */
    private double @Nullable [] change(OnCourse.Neighbour other, int i, PlanePoint here, double north, double east) {
        int every = track.clock().steps(EVERY);
        int oldest = Math.max(0, i - track.clock().steps(OLDEST));
        double least = Double.POSITIVE_INFINITY;
        int left = -1;
        for (int k = i; k >= oldest; k -= every) {
            PlanePoint there = other.bow().at(k);
            if (there == null) {
                continue;
            }
            double age = (i - k) * track.clock().step();
            double distance = here.distanceTo(there.plus(north * age, east * age));
            if (distance < least) {
                least = distance;
                left = k;
            }
        }
        // The newest place is the wing itself: who is nearest to that is ahead of it or beside it.
        if (left < 0 || left > i - every) {
            return null;
        }
        return wake(other.track(), left, (i - left) * track.clock().step(), least);
    }

    private double @Nullable [] wake(WindTrack other, int left, double age, double aside) {
        double tws = other.get(Quantity.TWS, left);
        double twa = other.get(Quantity.COURSE_TWA, left);
        double course = other.get(Quantity.COURSE, left);
        double speed = other.get(Quantity.SPEED, left);
        Target target = Double.isNaN(tws) || Double.isNaN(twa)
                ? null
                : book.find(tws, twa).target();
        if (target == null || Double.isNaN(course) || !(speed > 0.5 * target.boatSpeed())) {
            return null;
        }
        double felt = Math.sqrt(tws * tws + speed * speed + 2 * tws * speed * StrictMath.cos(twa));
        double width = FIRST_WIDTH * 2 * height + GROWTH * felt * age;
        double bell = StrictMath.exp(-aside * aside / (2 * width * width));
        double perForce = 2 / (AirState.STANDARD.density() * felt * 2 * Math.PI * width * width) * bell;
        // The air is pushed against the force on the boat: aft by the drive, to windward by the side force.
        double windward = course + Math.signum(twa) * Math.PI / 2;
        double drive = target.loads().drive();
        double side = target.loads().sideForce();
        return new double[] {
            perForce * (-drive * StrictMath.cos(course) + side * StrictMath.cos(windward)),
            perForce * (-drive * StrictMath.sin(course) + side * StrictMath.sin(windward))
        };
    }
}
