package trimwright.bench;

import trimwright.air.AirState;
import trimwright.air.WindProfile;
import trimwright.boat.Boat;
import trimwright.boat.Side;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFiles;
import trimwright.platform.Conditions;
import trimwright.platform.FoilSet;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.water.WaterState;

/** The demo boat with its tall wing, and a state in which it foils. */
public final class DemoPlatform {
    private DemoPlatform() {}

    public static Boat boat() {
        return BoatFiles.find("whimbrel14").boat();
    }

    public static WingSpec wing() {
        return boat().getWing("tall");
    }

    public static Platform platform() {
        return new Platform(boat(), wing(), AirState.STANDARD, WaterState.sea(288.15));
    }

    /** A wind of 8 m/s at 10 m on starboard tack. */
    public static Conditions conditions() {
        return new Conditions(WindProfile.overSea(8), Side.STARBOARD, FoilSet.LEEWARD_DOWN);
    }

    /** Reaching on the foils, near balance in the wind of {@link #conditions()} but not in it. */
    public static SailingState foiling() {
        return SailingState.upright()
                .with(Variable.BOAT_SPEED, 14)
                .with(Variable.LEEWAY, 0.06)
                .with(Variable.MAIN_RAKE, 0.05)
                .with(Variable.SHEET, 0.3)
                .with(Variable.CAMBER, 0.4)
                .with(Variable.TWIST, 0.3)
                .with(Variable.HEEL, 0.05)
                .with(Variable.RIDE_HEIGHT, 0.9)
                .with(Variable.ELEVATOR_DIFFERENTIAL, 0.04)
                .with(Variable.CREW_PLACE, 3.7)
                .with(Variable.TRUE_WIND_ANGLE, 1.8);
    }
}
