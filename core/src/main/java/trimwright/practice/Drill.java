package trimwright.practice;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.crew.HelmOrder;
import trimwright.crew.HelmOrder.Way;
import trimwright.crew.SailingAims;

/** One exercise: what is sailed, in what wind, and what counts. Lengths and unrest are chosen. */
public enum Drill {
    /** Keep her at her target against a steady wind. */
    HOLD(Way.UPWIND, 90, 0, 0, 0),
    /** The same down the wind. */
    RUN(Way.DOWNWIND, 90, 0, 0, 0),
    /** Keep her at her target through gusts, puffs and shifts. */
    GUSTS(Way.UPWIND, 150, 0.08, 0.12, Math.toRadians(3)),
    /** The same down the wind. */
    PUFFS(Way.DOWNWIND, 150, 0.08, 0.12, Math.toRadians(3)),
    /** A tack at the driver's word and another back. */
    TACK(Way.UPWIND, 75, 0.03, 0, 0),
    /** A gybe at the driver's word and another back. */
    GYBE(Way.DOWNWIND, 75, 0.03, 0, 0),
    /** A start on a reach: to be at the line at full speed as the gun goes, with time to lose before. */
    START(Way.COURSE, 65, 0.07, 0, 0);

    /** Time from the drill's beginning to the first word, and between words (s). */
    private static final double WORD = 10;

    private static final double BETWEEN = 32;

    /** A start's course from the wind (rad), its gun (s), and how long the way to the line would take at the card's speed (s): chosen. */
    private static final double REACH = Math.toRadians(100);

    private static final double GUN = 40;
    private static final double AT_SPEED = 22;

    private final Way way;
    private final double seconds;
    private final double intensity;
    private final double puffs;
    private final double swing;

    Drill(Way way, double seconds, double intensity, double puffs, double swing) {
        this.way = way;
        this.seconds = seconds;
        this.intensity = intensity;
        this.puffs = puffs;
        this.swing = swing;
    }

    public Way way() {
        return way;
    }

    /** Length (s). */
    public double seconds() {
        return seconds;
    }

    /** Standard deviation of turbulence over the mean wind (-). */
    public double intensity() {
        return intensity;
    }

    /** Mean rise of the wind in a puff over the mean wind (-). */
    public double puffs() {
        return puffs;
    }

    /** Standard deviation of slow swings of direction (rad). */
    public double swing() {
        return swing;
    }

    /** Whether she turns. */
    public boolean turns() {
        return this == TACK || this == GYBE;
    }

    /** Times of the driver's words from the beginning (s). */
    public List<Double> words() {
        return turns() ? List.of(WORD, WORD + BETWEEN) : List.of();
    }

    /** The start to be made in a wind (m/s), null where the drill has none. */
    public @Nullable StartTask startTask(SailingAims aims, double wind) {
        return this == START
                ? new StartTask(GUN, AT_SPEED * aims.at(wind, REACH).speed(), REACH)
                : null;
    }

    /** Angle from the course to the wind at which she begins (rad). */
    double angle(SailingAims aims, double wind) {
        return switch (way) {
            case UPWIND -> aims.upwindAngle(wind);
            case DOWNWIND -> aims.downwindAngle(wind);
            case COURSE -> REACH;
        };
    }

    /** What the driver was last told at that time from the beginning (s); she begins with the wind from starboard. */
    HelmOrder orderAt(double time) {
        long said = words().stream().filter(word -> word <= time).count();
        return new HelmOrder(way, said % 2 == 0 ? 1 : -1, way == Way.COURSE ? REACH : Double.NaN);
    }
}
