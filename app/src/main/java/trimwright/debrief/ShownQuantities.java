package trimwright.debrief;

import java.util.List;
import trimwright.debrief.Shown.Sign;
import trimwright.debrief.Shown.Unit;
import trimwright.wind.Quantity;

/** Which quantities a debrief shows, in which order and under which keys. */
final class ShownQuantities {
    static final Shown BOAT_SPEED = new Shown(Quantity.SPEED, "boat_speed", Unit.KN, Sign.AS_IT_STANDS);
    static final Shown TWS = new Shown(Quantity.TWS, "tws", Unit.KN, Sign.AS_IT_STANDS);
    static final Shown TWD = new Shown(Quantity.TWD, "twd", Unit.DEG, Sign.AS_IT_STANDS);
    static final Shown TWA = new Shown(Quantity.TWA, "twa", Unit.DEG, Sign.FREE_OF_TACK);
    static final Shown COURSE_TWA = new Shown(Quantity.COURSE_TWA, "course_twa", Unit.DEG, Sign.FREE_OF_TACK);
    static final Shown AWA = new Shown(Quantity.AWA, "awa", Unit.DEG, Sign.FREE_OF_TACK);
    static final Shown AWS = new Shown(Quantity.AWS, "aws", Unit.KN, Sign.AS_IT_STANDS);
    static final Shown HEEL = new Shown(Quantity.ROLL, "heel", Unit.DEG, Sign.FREE_OF_TACK);
    static final Shown PITCH = new Shown(Quantity.PITCH, "pitch", Unit.DEG, Sign.AS_IT_STANDS);
    static final Shown RIDE_HEIGHT = new Shown(Quantity.RIDE_HEIGHT, "ride_height", Unit.M, Sign.AS_IT_STANDS);
    static final Shown CAMBER = new Shown(Quantity.CAMBER, "camber", Unit.DEG, Sign.FREE_OF_TACK);
    static final Shown TWIST = new Shown(Quantity.TWIST, "twist", Unit.DEG, Sign.FREE_OF_TACK);
    static final Shown SHEET = new Shown(Quantity.SHEET, "sheet", Unit.DEG, Sign.FREE_OF_TACK);
    static final Shown SHEET_LOAD = new Shown(Quantity.SHEET_LOAD, "sheet_load", Unit.N, Sign.AS_IT_STANDS);

    /** Of a phase, each with mean and standard deviation. */
    static final List<Shown> OF_PHASE = List.of(
            BOAT_SPEED,
            TWS,
            TWD,
            TWA,
            COURSE_TWA,
            AWA,
            AWS,
            HEEL,
            PITCH,
            RIDE_HEIGHT,
            CAMBER,
            TWIST,
            SHEET,
            SHEET_LOAD,
            new Shown(Quantity.RUDDER, "rudder", Unit.DEG, Sign.FREE_OF_TACK),
            new Shown(Quantity.LEEWAY, "leeway", Unit.DEG, Sign.FREE_OF_TACK));

    /** Of a leg, each with mean and standard deviation. */
    static final List<Shown> OF_LEG = List.of(BOAT_SPEED, TWS, TWD);

    private ShownQuantities() {}
}
