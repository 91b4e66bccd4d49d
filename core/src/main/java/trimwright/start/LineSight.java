package trimwright.start;

import org.jspecify.annotations.Nullable;
import trimwright.course.PlaneLine;
import trimwright.course.PlanePoint;
import trimwright.units.Angles;

/**
 * How a boat stands to the start line now.
 *
 * @param toGun time to the start signal (s), negative after it
 * @param toLine straight distance of the bow to the line (m), negative beyond it
 * @param way along the course to the line (m); NaN where the course does not lead to it
 * @param reach seconds to the line at full power from now; NaN where no table tells
 */
public record LineSight(double toGun, double toLine, double way, Spread reach) {
    /** Largest angle between the course and the line's normal at which the course leads to the line (rad): chosen. */
    private static final double STEEPEST = Math.toRadians(75);

    /** What is known of the boat: NaN where it is not. */
    public record Boat(PlanePoint bow, double course, double speed, double wind, double windFrom) {}

    /**
     * From the boat's place and course.
     *
     * @param book null where there is none
     * @param toGun (s)
     */
    public static LineSight of(PlaneLine line, Boat boat, @Nullable LineBook book, double toGun) {
        double before = -line.ahead(boat.bow());
        // The line is crossed with its port end to port: across it is a quarter turn before the way from port to
        // starboard.
        double across = line.portEnd().bearingTo(line.starboardEnd()) - Math.PI / 2;
        double off = Math.abs(Angles.signed(boat.course() - across));
        double way = before >= 0 && off <= STEEPEST ? before / StrictMath.cos(off) : Double.NaN;
        double angle = Math.abs(Angles.signed(boat.windFrom() - boat.course()));
        Spread reach = book == null
                ? new Spread(Double.NaN, Double.NaN, Double.NaN)
                : book.to(boat.wind(), angle, boat.speed(), way);
        return new LineSight(toGun, before, way, reach);
    }

    /** Seconds that can still be lost: as half of the boats would have them; with none left it is full power now. */
    public double spare() {
        return toGun - reach.middle();
    }

    /** The same as all but one boat in ten would have them at least. */
    public double spareLeast() {
        return toGun - reach.high();
    }
}
