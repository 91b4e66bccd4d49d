package trimwright.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import trimwright.card.GustCard;
import trimwright.card.GustRow;
import trimwright.card.GustSwing;
import trimwright.platform.Platform;
import trimwright.prepare.InParallel;
import trimwright.prepare.TargetRun;
import trimwright.target.TargetBook;
import trimwright.target.TargetLookup;
import trimwright.target.TargetMode;
import trimwright.target.TargetPoint;
import trimwright.units.Units;

/** Computes gust cards, one target a task. */
public final class GustRun {
    private GustRun() {}

    /**
     * What a card says of one target.
     *
     * @param point the target
     * @param gusts one a change asked for; those in which the wing's flow has an answer
     */
    public record PointGusts(TargetPoint point, List<Gust> gusts) {
        public PointGusts {
            gusts = List.copyOf(gusts);
        }
    }

    /**
     * One change of wind.
     *
     * @param row before the boat answers
     * @param swing the boat with nobody moving; null on the hulls and where her state is not found again
     * @param steady the target of the same kind in the new wind; null where there is none
     */
    public record Gust(
            GustRow row,
            @Nullable GustSwing swing,
            @Nullable TargetPoint steady) {}

    /** Gusts at the targets asked for, from a book that has the winds; empty where none is solved. */
    public static List<PointGusts> of(GustRequest request, TargetBook book) throws InterruptedException {
        Platform platform = TargetRun.platformOf(request.file().boat(), request.wing());
        List<TargetPoint> points = new ArrayList<>();
        Double angle = request.angleDeg();
        if (angle != null) {
            add(points, find(book, TargetMode.ANGLE, request.windAfter(0), Units.fromDegrees(angle)));
        } else {
            add(points, find(book, TargetMode.UPWIND, request.windAfter(0), 0));
            add(points, find(book, TargetMode.DOWNWIND, request.windAfter(0), 0));
        }
        return InParallel.map("gusts", points, point -> gustsAt(request, book, platform, point));
    }

    private static void add(List<TargetPoint> points, @Nullable TargetPoint point) {
        if (point != null) {
            points.add(point);
        }
    }

    private static PointGusts gustsAt(GustRequest request, TargetBook book, Platform platform, TargetPoint point) {
        GustCard card = new GustCard(platform, request.handling());
        List<Gust> gusts = new ArrayList<>();
        for (double changeKn : request.changesKn()) {
            double change = Units.fromKnots(changeKn);
            GustRow row = card.rowOf(point, change);
            if (row != null) {
                GustSwing swing = point.isFoiling()
                        ? GustSwing.of(platform, TargetRun.AIR, TargetRun.water(), point, change)
                        : null;
                TargetPoint steady = find(book, point.mode(), request.windAfter(changeKn), point.trueWindAngle());
                gusts.add(new Gust(row, swing, steady));
            }
        }
        return new PointGusts(point, gusts);
    }

    /** The solved node of the book where there is one, else the value between nodes; null where there is no target. */
    private static @Nullable TargetPoint find(TargetBook book, TargetMode mode, double wind, double angle) {
        for (TargetPoint point : book.listBest()) {
            boolean isNode = point.mode() == mode
                    && point.trueWindSpeed() == wind
                    && (mode != TargetMode.ANGLE || point.trueWindAngle() == angle);
            if (isNode) {
                return point.isSolved() ? point : null;
            }
        }
        TargetLookup found = switch (mode) {
            case UPWIND -> book.findUpwind(wind);
            case DOWNWIND -> book.findDownwind(wind);
            case ANGLE -> book.find(wind, angle);
        };
        return found.target() == null ? null : Objects.requireNonNull(found.point());
    }
}
