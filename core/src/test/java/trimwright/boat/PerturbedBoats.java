package trimwright.boat;

import java.util.List;

/** The demo class with one thing changed by a tenth: what holds for one boat only is no trend. */
public final class PerturbedBoats {
    private PerturbedBoats() {}

    /** A tenth heavier, a wing a tenth taller, a crew a tenth further in. */
    public static List<Boat> all() {
        Boat boat = Whimbrel14.boat();
        Mass mass = boat.platform();
        Crew crew = boat.crew();
        Mass heavier = new Mass(1.1 * mass.mass(), mass.x(), mass.height());
        Crew nearer = new Crew(crew.count(), crew.massEach(), crew.x(), 0.9 * crew.yMax(), crew.height());
        List<WingSpec> taller =
                boat.wings().stream().map(PerturbedBoats::stretched).toList();
        return List.of(
                with(boat, heavier, crew, boat.wings()),
                with(boat, mass, crew, taller),
                with(boat, mass, nearer, boat.wings()));
    }

    private static WingSpec stretched(WingSpec wing) {
        List<WingStation> stations = wing.stations().stream()
                .map(station -> new WingStation(1.1 * station.height(), station.chord(), station.thicknessRatio()))
                .toList();
        return new WingSpec(
                wing.id(),
                stations,
                wing.footHeight(),
                wing.x(),
                wing.flapChordRatio(),
                wing.turningAxisRatio(),
                wing.flapPanels(),
                wing.footPlate(),
                wing.slotGapRatio(),
                wing.mass(),
                1.1 * wing.massHeight(),
                wing.trim(),
                wing.sheet());
    }

    private static Boat with(Boat boat, Mass platform, Crew crew, List<WingSpec> wings) {
        return new Boat(
                boat.name(),
                boat.title(),
                boat.hulls(),
                platform,
                crew,
                wings,
                boat.foils(),
                boat.foilSets(),
                boat.windage(),
                boat.limits(),
                boat.windSensor(),
                boat.antenna(),
                boat.handling());
    }
}
