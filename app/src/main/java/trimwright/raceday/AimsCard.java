package trimwright.raceday;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.crew.Aim;
import trimwright.crew.SailingAims;
import trimwright.target.Attitude;
import trimwright.target.Branch;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.target.TrimSetting;

/**
 * What a simulated crew has on its card: the foiling rows of a target book as plain numbers. Where a row has no foiling
 * target at an angle, the nearest angle that has one stands in.
 */
public final class AimsCard {
    private AimsCard() {}

    /** The card; throws {@link IllegalArgumentException} where the book has no foiling target at all. */
    public static SailingAims of(TargetBook book) {
        List<Double> winds = new ArrayList<>();
        List<List<Aim>> rows = new ArrayList<>();
        List<Double> upwind = new ArrayList<>();
        List<Double> downwind = new ArrayList<>();
        for (double wind : book.grid().winds()) {
            TargetPoint against = best(book, TargetMode.UPWIND, wind);
            TargetPoint down = best(book, TargetMode.DOWNWIND, wind);
            List<Aim> row = row(book, wind);
            if (against != null && down != null && !row.isEmpty()) {
                winds.add(wind);
                rows.add(row);
                upwind.add(against.trueWindAngle());
                downwind.add(down.trueWindAngle());
            }
        }
        return new SailingAims(winds, book.grid().angles(), rows, upwind, downwind);
    }

    private static @Nullable TargetPoint best(TargetBook book, TargetMode mode, double wind) {
        return foiling(book, mode, wind).stream().findFirst().orElse(null);
    }

    private static List<Aim> row(TargetBook book, double wind) {
        List<TargetPoint> solved = foiling(book, TargetMode.ANGLE, wind);
        if (solved.isEmpty()) {
            return List.of();
        }
        List<Aim> row = new ArrayList<>();
        for (double angle : book.grid().angles()) {
            TargetPoint nearest = solved.get(0);
            for (TargetPoint point : solved) {
                if (Math.abs(point.trueWindAngle() - angle) < Math.abs(nearest.trueWindAngle() - angle)) {
                    nearest = point;
                }
            }
            row.add(aim(nearest.getTarget()));
        }
        return row;
    }

    private static List<TargetPoint> foiling(TargetBook book, TargetMode mode, double wind) {
        return book.points().stream()
                .filter(point -> point.mode() == mode
                        && point.branch() == Branch.FOILING
                        && point.trueWindSpeed() == wind
                        && point.isSolved())
                .toList();
    }

    private static Aim aim(Target target) {
        TrimSetting trim = target.trim();
        Attitude lies = target.attitude();
        return new Aim(
                target.boatSpeed(),
                new Aim.WingAim(
                        trim.camber(), trim.twist(), trim.twistMidRatio(), target.apparentWindAngle() - trim.sheet()),
                new Aim.AttitudeAim(
                        lies.heel(),
                        lies.rideHeight(),
                        lies.leeway(),
                        lies.pitch(),
                        lies.rudder(),
                        lies.elevatorDifferential()),
                target.loads().rightingMoment());
    }
}
