package trimwright.sim;

import trimwright.boat.Boat;
import trimwright.boat.Crew;
import trimwright.boat.Limits;
import trimwright.boat.Mass;
import trimwright.boat.Windage;

/**
 * How the boats that really sail differ from the boat file that everybody knows, so that a debrief is not judged by the very
 * model that made its data. Each is a share added (-).
 *
 * @param mass of the platform
 * @param drag of the windage
 * @param moment of what rights the boat: crew's arm and elevators' force
 */
public record Perturbation(double mass, double drag, double moment) {
    public static final Perturbation NONE = new Perturbation(0, 0, 0);

    Boat of(Boat boat) {
        Mass platform = boat.platform();
        Crew crew = boat.crew();
        Windage windage = boat.windage();
        Limits limits = boat.limits();
        return new Boat(
                boat.name(),
                boat.title(),
                boat.hulls(),
                new Mass(platform.mass() * (1 + mass), platform.x(), platform.height()),
                new Crew(crew.count(), crew.massEach(), crew.x(), crew.yMax() * (1 + moment), crew.height()),
                boat.wings(),
                boat.foils(),
                boat.foilSets(),
                new Windage(
                        windage.areaAhead() * (1 + drag),
                        windage.areaAbeam() * (1 + drag),
                        windage.height(),
                        windage.x()),
                limits.withElevatorDownForce(limits.elevatorDownForce() * (1 + moment)),
                boat.windSensor(),
                boat.antenna(),
                boat.handling());
    }
}
