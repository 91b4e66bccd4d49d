package trimwright.sim;

import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.course.CourseGeometry;
import trimwright.crew.SailingAims;
import trimwright.water.WaterState;

/**
 * What all boats of a day share.
 *
 * @param boat the class as its boat file says
 * @param wing id of the wing that all carry
 * @param aims from that boat file
 * @param course laid out
 * @param gun time of the start signal (s from the day's zero)
 * @param air density and viscosity
 * @param water density and viscosity
 */
public record Venue(
        Boat boat, String wing, SailingAims aims, CourseGeometry course, double gun, AirState air, WaterState water) {}
