package trimwright.target;

import org.jspecify.annotations.Nullable;
import trimwright.platform.Platform;
import trimwright.platform.Variable;

/** The limits of a steady state, in the order of the row of functions: each is not negative where it is kept. */
enum LimitRow {
    HEAD_FLAP(TargetLimit.TWIST_MAX),
    SHEET_LOAD_MAX(TargetLimit.SHEET_LOAD),
    SHEET_SLACK(TargetLimit.SHEET_LOAD),
    STALL_1(TargetLimit.STALL_MARGIN),
    STALL_2(TargetLimit.STALL_MARGIN),
    STALL_3(TargetLimit.STALL_MARGIN),
    STALL_4(TargetLimit.STALL_MARGIN),
    STALL_5(TargetLimit.STALL_MARGIN),
    STALL_6(TargetLimit.STALL_MARGIN),
    STALL_7(TargetLimit.STALL_MARGIN),
    STALL_8(TargetLimit.STALL_MARGIN),
    CAVITATION_TIP(TargetLimit.CAVITATION_MAIN),
    CAVITATION_SHAFT(TargetLimit.CAVITATION_MAIN),
    CAVITATION_LEEWARD_ELEVATOR(TargetLimit.CAVITATION_ELEVATOR),
    CAVITATION_WINDWARD_ELEVATOR(TargetLimit.CAVITATION_ELEVATOR),
    CAVITATION_LEEWARD_RUDDER(TargetLimit.CAVITATION_ELEVATOR),
    CAVITATION_WINDWARD_RUDDER(TargetLimit.CAVITATION_ELEVATOR),
    VENTILATION_SHAFT(TargetLimit.VENTILATION),
    VENTILATION_LEEWARD_RUDDER(TargetLimit.VENTILATION),
    VENTILATION_WINDWARD_RUDDER(TargetLimit.VENTILATION),
    TIP_DEPTH(TargetLimit.VENTILATION),
    /** Of the windward main foil: kept wherever it is lifted. */
    CAVITATION_WINDWARD_TIP(TargetLimit.CAVITATION_MAIN),
    CAVITATION_WINDWARD_SHAFT(TargetLimit.CAVITATION_MAIN),
    VENTILATION_WINDWARD_SHAFT(TargetLimit.VENTILATION),
    STALL_WINDWARD_TIP(TargetLimit.STALL_MARGIN),
    STALL_WINDWARD_SHAFT(TargetLimit.STALL_MARGIN),
    STALL_TIP(TargetLimit.STALL_MARGIN),
    STALL_SHAFT(TargetLimit.STALL_MARGIN),
    STALL_LEEWARD_ELEVATOR(TargetLimit.STALL_MARGIN),
    STALL_WINDWARD_ELEVATOR(TargetLimit.STALL_MARGIN),
    STALL_LEEWARD_RUDDER(TargetLimit.STALL_MARGIN),
    STALL_WINDWARD_RUDDER(TargetLimit.STALL_MARGIN),
    ELEVATOR_DOWN_FORCE(TargetLimit.ELEVATOR_DOWN_FORCE),
    LEEWARD_ELEVATOR_UP(TargetLimit.ELEVATOR_DOWN_FORCE),
    LEEWARD_ELEVATOR_DOWN(TargetLimit.ELEVATOR_DOWN_FORCE),
    WINDWARD_ELEVATOR_UP(TargetLimit.ELEVATOR_DOWN_FORCE),
    WINDWARD_ELEVATOR_DOWN(TargetLimit.ELEVATOR_DOWN_FORCE),
    /** Foiling: the lower hull stays this high. On the hulls: they carry their share of the weight. */
    HULLS(null),
    /** Speed along the goal not under a floor: only where bands are sought. */
    SPEED_FLOOR(null),
    /** Righting moment not under a floor: only where bands are sought. Not above a ceiling: in {@link BelowLimits}. */
    MOMENT_FLOOR(null);

    /** Strips of the wing that have their own stall margin in the row. */
    static final int STALL_PLACES = STALL_8.ordinal() - STALL_1.ordinal() + 1;

    private final @Nullable TargetLimit limit;

    LimitRow(@Nullable TargetLimit limit) {
        this.limit = limit;
    }

    @Nullable
    TargetLimit limit() {
        return limit;
    }

    /** Whether it is one of the wing, its sheet or its flap. */
    boolean isOfWing() {
        return ordinal() <= STALL_8.ordinal();
    }

    /** The limit itself in the scale of its row: what one per cent of it is counted from. */
    double size(Platform platform) {
        return switch (this) {
            case HEAD_FLAP -> Math.abs(platform.wing().trim().headFlapMin()) / Variable.TWIST.scale();
            case STALL_1, STALL_2, STALL_3, STALL_4, STALL_5, STALL_6, STALL_7, STALL_8 ->
                platform.wing().trim().stallMarginMin() / WingFunctions.MARGIN_SCALE;
            case TIP_DEPTH -> platform.boat().mainFoil().immersionMin() / Variable.RIDE_HEIGHT.scale();
            case LEEWARD_ELEVATOR_UP, LEEWARD_ELEVATOR_DOWN, WINDWARD_ELEVATOR_UP, WINDWARD_ELEVATOR_DOWN ->
                platform.boat().rudder().elevatorAngleMax() / Variable.ELEVATOR.scale();
            // The others are ratios to their limit, which is one or close to it.
            default -> 1;
        };
    }

    /** Place in the row of functions: f, six equations, then the limits. */
    int place() {
        return FIRST + ordinal();
    }

    private static final int FIRST = 1 + TrimProblem.EQUATIONS;
}
