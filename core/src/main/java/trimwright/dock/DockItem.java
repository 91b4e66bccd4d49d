package trimwright.dock;

/** What is checked, in the order in which it is shown. */
public enum DockItem {
    HEEL_ZERO(Unit.ANGLE, DockStep.STILL),
    PITCH_ZERO(Unit.ANGLE, DockStep.STILL),
    HEEL_SIDE(Unit.ANGLE, DockStep.CREW_STARBOARD),
    SHEET_ZERO(Unit.ANGLE, DockStep.STILL),
    FLAP_FOOT_ZERO(Unit.ANGLE, DockStep.STILL),
    FLAP_MIDDLE_ZERO(Unit.ANGLE, DockStep.STILL),
    FLAP_HEAD_ZERO(Unit.ANGLE, DockStep.STILL),
    /** Full swings are told from the gauge's own zero. */
    CAMBER_STARBOARD(Unit.ANGLE, DockStep.CAMBER_STARBOARD),
    CAMBER_PORT(Unit.ANGLE, DockStep.CAMBER_PORT),
    CAMBER_RATE_STARBOARD(Unit.RATE, DockStep.CAMBER_STARBOARD),
    CAMBER_RATE_PORT(Unit.RATE, DockStep.CAMBER_PORT),
    TWIST_STARBOARD(Unit.ANGLE, DockStep.TWIST_STARBOARD),
    TWIST_PORT(Unit.ANGLE, DockStep.TWIST_PORT),
    TWIST_RATE_STARBOARD(Unit.RATE, DockStep.TWIST_STARBOARD),
    TWIST_RATE_PORT(Unit.RATE, DockStep.TWIST_PORT),
    SHEET_PORT(Unit.ANGLE, DockStep.SHEET_PORT),
    SHEET_STARBOARD(Unit.ANGLE, DockStep.SHEET_STARBOARD),
    LOAD_SLACK(Unit.FORCE, DockStep.STILL),
    LOAD_PULL(Unit.FORCE, DockStep.PULL),
    /** Change of the wind angle over change of the sheet: -1 for a sensor that turns with the wing, 0 for one that does not. */
    WIND_TURNS(Unit.RATIO, DockStep.SHEET_STARBOARD),
    WIND_ALIGNMENT(Unit.ANGLE, DockStep.WING_FREE),
    WIND_SPEED(Unit.SPEED, DockStep.STILL),
    HEADING(Unit.ANGLE, DockStep.STILL),
    /** How far the fixes scatter. */
    POSITION(Unit.LENGTH, DockStep.STILL),
    ANTENNA_AFT(Unit.LENGTH, DockStep.STILL),
    ANTENNA_STARBOARD(Unit.LENGTH, DockStep.STILL),
    /** By how much the wind sensor's times are behind those of the sheet gauge. */
    CLOCK(Unit.TIME, DockStep.WING_FREE);

    /** In what its numbers are; SI, radians. */
    public enum Unit {
        ANGLE,
        RATE,
        FORCE,
        SPEED,
        LENGTH,
        TIME,
        RATIO
    }

    private final Unit unit;
    private final DockStep step;

    DockItem(Unit unit, DockStep step) {
        this.unit = unit;
        this.step = step;
    }

    public Unit unit() {
        return unit;
    }

    /** The step whose end must have come before it can be told. */
    public DockStep step() {
        return step;
    }
}
