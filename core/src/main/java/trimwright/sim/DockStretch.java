package trimwright.sim;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import trimwright.boat.Boat;
import trimwright.boat.Handling;
import trimwright.boat.WingSpec;
import trimwright.chance.RandomStream;
import trimwright.dock.DockStep;
import trimwright.units.Units;

/**
 * A boat at the dock while her crew goes through the list of {@link DockStep}, hands up to eight seconds late. She lies in small waves and a light
 * wind that turns and breathes; nothing of the air's forces is computed. Sizes chosen, as of a quiet harbour.
 */
public final class DockStretch {
    /** Between readings (s). */
    static final double PERIOD = 0.1;

    /** Pull on the sheet in the last step (N): chosen; what the crew knows of it. */
    public static final double PULL = 1500;

    private static final double WIND = Units.fromKnots(9);
    private static final double WIND_FROM = Math.toRadians(25);
    private static final double BY_HAND = Math.toRadians(12);
    private static final double WATERPLANE = 0.7;
    private static final double WEIGHT_OF_WATER = 1026 * 9.81;

    private final Boat boat;
    private final WingSpec wing;
    private final DockFaults faults;
    private final RandomStream random;
    private final Map<DockStep, Double> late = new EnumMap<>(DockStep.class);
    private final Wander direction;
    private final Wander speed;
    private final Wander roll;
    private final Wander pitch;
    private final Wander heading;
    private final Wander free;
    private double camber;
    private double twist;
    private double sheet;

    private DockStretch(Boat boat, WingSpec wing, DockFaults faults, long seed) {
        this.boat = boat;
        this.wing = wing;
        this.faults = faults;
        random = RandomStream.of(seed, "at the dock");
        for (DockStep step : DockStep.values()) {
            late.put(step, random.uniform(0.5, 8));
        }
        direction = new Wander(Math.toRadians(4), 15);
        speed = new Wander(Units.fromKnots(0.8), 10);
        roll = new Wander(Math.toRadians(0.15), 2);
        pitch = new Wander(Math.toRadians(0.1), 2);
        heading = new Wander(Math.toRadians(0.8), 20);
        free = new Wander(Math.toRadians(0.8), 4);
    }

    /** A quantity that forgets itself in so many seconds. */
    private final class Wander {
        private final double size;
        private final double keep;
        private double now;

        private Wander(double size, double time) {
            this.size = size;
            keep = StrictMath.exp(-PERIOD / time);
            now = size * random.normal();
        }

        double next() {
            now = keep * now + size * Math.sqrt(1 - keep * keep) * random.normal();
            return now;
        }
    }

    /** All readings from the begin of the list to its end; the boat file must have rates of its controls. */
    public static List<DockReading> of(Boat boat, WingSpec wing, DockFaults faults, long seed, String name) {
        DockStretch stretch = new DockStretch(boat, wing, faults, seed);
        Instruments instruments = new Instruments(faults.offsets(), PERIOD, seed, name);
        RandomStream middle = RandomStream.of(seed, "flap at half height of " + name);
        List<DockReading> readings = new ArrayList<>();
        for (int i = 0; i * PERIOD <= DockStep.PULL.end(); i++) {
            Moment moment = stretch.moment(i * PERIOD);
            double flap =
                    moment.camber() - moment.twist() / 2 + faults.flapMiddle() + Math.toRadians(0.1) * middle.normal();
            readings.add(new DockReading(instruments.read(moment), flap));
        }
        return new PlainFaults(faults.plain()).on(readings);
    }

    private boolean isOn(DockStep step, double time) {
        return time >= step.begin() + late.getOrDefault(step, 0.0);
    }

    private Moment moment(double time) {
        double from = WIND_FROM + direction.next();
        double wind = WIND + speed.next();
        move(time, from);
        boolean over = isOn(DockStep.CREW_STARBOARD, time) && !isOn(DockStep.CAMBER_STARBOARD, time);
        double pulled = isOn(DockStep.PULL, time) && time > DockStep.PULL.begin() + 12 ? PULL : 0;
        boolean sensorTurns = boat.windSensor().turnsWithWing()
                ^ faults.plain().contains(new DockFaults.Plain(DockFaults.Gauge.WIND, DockFaults.Kind.OTHER_MOUNT));
        return new Moment(
                time,
                0,
                0,
                0,
                0,
                1 + heading.next(),
                0,
                roll.next() + (over ? listed() : 0),
                pitch.next(),
                wind * StrictMath.cos(from),
                wind * StrictMath.sin(from),
                sensorTurns ? sheet : 0,
                0,
                camber,
                twist,
                sheet,
                pulled,
                -boat.hulls().draft());
    }

    /** List with all aboard on the starboard hull, by the waterplanes of two hulls (rad). */
    private double listed() {
        double arm = boat.hulls().spacing() / 2;
        double plane = 2 * boat.hulls().waterlineLength() * boat.hulls().beam() * WATERPLANE;
        return boat.crew().mass() * 9.81 * boat.crew().yMax() / (WEIGHT_OF_WATER * plane * arm * arm);
    }

    private void move(double time, double windFrom) {
        Handling handling = boat.handling();
        if (handling == null) {
            throw new IllegalArgumentException("a boat without rates of her controls: " + boat.name());
        }
        double full = wing.trim().camberMax();
        double mostTwist = Math.min(wing.trim().twistMax(), full - wing.trim().headFlapMin());
        double toCamber = 0;
        double toTwist = 0;
        if (isOn(DockStep.FLAP_BACK, time)) {
            toCamber = twist == 0 ? 0 : -full;
        } else if (isOn(DockStep.CAMBER_PORT, time)) {
            toCamber = -full;
            toTwist = isOn(DockStep.TWIST_PORT, time) ? -mostTwist : 0;
        } else if (isOn(DockStep.CAMBER_STARBOARD, time)) {
            toCamber = full;
            toTwist = isOn(DockStep.TWIST_STARBOARD, time) && !isOn(DockStep.TWIST_BACK, time) ? mostTwist : 0;
        }
        camber = toward(camber, toCamber, faults.camberRate() * handling.rates().camber());
        twist = toward(twist, toTwist, faults.twistRate() * handling.rates().twist());
        if (isOn(DockStep.PULL, time)) {
            sheet = toward(sheet, 0, BY_HAND);
        } else if (isOn(DockStep.WING_FREE, time)) {
            // A free wing follows the wind in about a second and never quite.
            sheet += PERIOD * (windFrom + free.next() - sheet);
        } else if (isOn(DockStep.SHEET_PORT, time)) {
            double out = wing.trim().sheetMax();
            sheet = toward(sheet, isOn(DockStep.SHEET_STARBOARD, time) ? -out : out, BY_HAND);
        } else {
            sheet = toward(sheet, 0, BY_HAND);
        }
    }

    private static double toward(double from, double to, double rate) {
        return from + Math.max(-rate * PERIOD, Math.min(rate * PERIOD, to - from));
    }
}
