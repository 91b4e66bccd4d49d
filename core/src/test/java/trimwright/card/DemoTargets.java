package trimwright.card;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.Handling;
import trimwright.boat.Whimbrel14;
import trimwright.platform.Platform;
import trimwright.target.TargetFinder;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.units.Units;
import trimwright.water.WaterState;

/** A few targets of the demo boat, found once. */
final class DemoTargets {
    static final Boat BOAT = Whimbrel14.boat();

    static final Platform PLATFORM =
            new Platform(BOAT, BOAT.getWing("tall"), AirState.STANDARD, WaterState.sea(Units.fromCelsius(15)));

    static final Handling HANDLING = Objects.requireNonNull(BOAT.handling());

    static final List<TargetPoint> FOILING = find();

    private DemoTargets() {}

    private static List<TargetPoint> find() {
        List<Double> angles = List.of(Units.fromDegrees(60), Units.fromDegrees(100));
        return new TargetFinder(PLATFORM, Map.of())
                .pointsAt(Units.fromKnots(14), angles).stream()
                        .filter(point -> point.mode() == TargetMode.ANGLE && point.isFoiling() && point.isSolved())
                        .toList();
    }
}
