package trimwright.target;

import trimwright.air.TrueWind;
import trimwright.boat.Boat;
import trimwright.boat.Limits;
import trimwright.boat.TrimRange;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.units.Units;

/**
 * Where a search begins with no neighbour: speed from the course theorem (hydro reference 3.7) with a common apparent wind
 * angle, the rest middling values.
 */
final class FirstGuess {
    /** Apparent wind angle to the course when foiling (rad), chosen in the middle of 12 to 30 degrees. */
    private static final double APPARENT_ANGLE = Units.fromDegrees(22);

    /** Faster guesses (m/s) lie beyond most limits. */
    private static final double FOILING_MOST = 20;

    private static final double HULLS_MOST = 7;

    /** Angle of attack and camber (rad) at which every wing pulls and none stalls. */
    private static final double ATTACK = Units.fromDegrees(8);

    private static final double CAMBER = Units.fromDegrees(15);

    private FirstGuess() {}

    static SailingState foiling(Platform platform, double wind, double angle) {
        Boat boat = platform.boat();
        Limits limits = boat.limits();
        double speed = wind * StrictMath.sin(angle - APPARENT_ANGLE) / StrictMath.sin(APPARENT_ANGLE);
        return common(platform, wind, angle, Math.min(FOILING_MOST, speed))
                .with(Variable.MAIN_RAKE, Units.fromDegrees(2))
                .with(Variable.HEEL, 0.6 * limits.heelMax())
                .with(Variable.RIDE_HEIGHT, 0.3 * limits.rideHeightMin() + 0.7 * limits.rideHeightMax())
                .with(Variable.ELEVATOR_DIFFERENTIAL, Units.fromDegrees(1))
                .with(Variable.CREW_PLACE, boat.crew().yMax());
    }

    static SailingState onHulls(Platform platform, double wind, double angle) {
        double abeam = StrictMath.sin(angle);
        double speed = wind * (0.5 + 0.6 * abeam * abeam);
        return common(platform, wind, angle, Math.min(HULLS_MOST, speed))
                .with(Variable.RIDE_HEIGHT, -platform.restingDraft())
                .with(Variable.CREW_PLACE, 0.5 * platform.boat().crew().yMax());
    }

    private static SailingState common(Platform platform, double wind, double angle, double speed) {
        TrimRange trim = platform.wing().trim();
        double camber = Math.min(CAMBER, trim.camberMax());
        double apparent = Math.abs(new TrueWind(wind, angle).apparent(speed).angle());
        double sheet = Math.max(0, Math.min(trim.sheetMax(), apparent - ATTACK));
        return SailingState.upright()
                .with(Variable.BOAT_SPEED, speed)
                .with(Variable.TRUE_WIND_ANGLE, angle)
                .with(Variable.LEEWAY, Units.fromDegrees(2.5))
                .with(Variable.SHEET, sheet)
                .with(Variable.CAMBER, camber)
                .with(Variable.TWIST, 0.7 * camber);
    }
}
