package trimwright.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.platform.Platform;
import trimwright.platform.SailingState;
import trimwright.platform.Variable;
import trimwright.target.Branch;
import trimwright.target.TargetBook;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.water.WaterState;

/** Take-offs in time for a row of the take-off card, over the angles at which the balance says that she takes off by herself. */
public final class TakeOffPaths {
    /** Angles that are sailed for a row, at most: chosen. */
    private static final int ANGLES = 6;

    private final Platform platform;
    private final AirState air;
    private final WaterState water;

    /** @param platform in that air and water */
    public TakeOffPaths(Platform platform, AirState air, WaterState water) {
        this.platform = platform;
        this.air = air;
        this.water = water;
    }

    /**
     * The take-off that pays soonest; where none pays, the one that spends least.
     *
     * @param choice of the row: from which target to which
     * @return null where one of them is missing, she takes off at no angle by herself, or the schedule brings her up at none
     */
    public @Nullable TakeOffPath bestOf(TargetBook book, TakeOffRow row, TakeOffRow.Choice choice) {
        TargetPoint hulls = choice.onHulls();
        TargetPoint foils = choice.onFoils();
        if (hulls == null || foils == null || row.byHerself().isEmpty()) {
            return null;
        }
        SailingState placed = MotionStart.withCrew(platform, hulls);
        // At the edge of the branch the state is not found again; then the crew begin amidships and walk.
        SailingState from = placed == null ? hulls.state() : placed;
        SailingState to = MotionStart.withCrew(platform, foils);
        if (to == null) {
            return null;
        }
        TakeOffSail sail = new TakeOffSail(platform, air, water, row.wind(), from, to);
        List<TakeOffPath> paths = new ArrayList<>();
        TakeOffCard card = new TakeOffCard(platform);
        for (SailingState gather : gathering(book, row)) {
            LiftOff lift = card.findLiftOff(book, row.wind(), gather.get(Variable.TRUE_WIND_ANGLE));
            TakeOffPath path = lift == null ? null : sail.by(gather, lift.state());
            if (path != null) {
                paths.add(path);
            }
        }
        return paths.stream()
                .min(Comparator.comparingDouble(TakeOffPath::paysAfter).thenComparingDouble(TakeOffPath::metresSpent))
                .orElse(null);
    }

    /** Where the crew balance a target (m to windward); NaN where its state is not found again. */
    public double crewPlace(TargetPoint point) {
        SailingState state = MotionStart.withCrew(platform, point);
        return state == null ? Double.NaN : state.get(Variable.CREW_PLACE);
    }

    /** Foiling states at the row's angles of take-off, evenly picked, the crew out. */
    private List<SailingState> gathering(TargetBook book, TakeOffRow row) {
        List<SailingState> states = new ArrayList<>();
        int step = (row.byHerself().size() + ANGLES - 1) / ANGLES;
        for (int i = 0; i < row.byHerself().size(); i += step) {
            double angle = row.byHerself().get(i);
            for (TargetPoint point : book.points()) {
                if (point.isSolved()
                        && point.branch() == Branch.FOILING
                        && point.mode() == TargetMode.ANGLE
                        && point.trueWindSpeed() == row.wind()
                        && point.trueWindAngle() == angle) {
                    states.add(point.state()
                            .with(Variable.CREW_PLACE, platform.boat().crew().yMax()));
                }
            }
        }
        return states;
    }
}
