package trimwright.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import trimwright.air.GustShape;
import trimwright.card.GustAct;
import trimwright.card.GustCard;
import trimwright.card.GustRow;
import trimwright.card.GustSwing;
import trimwright.card.GustWatch;
import trimwright.platform.Platform;
import trimwright.prepare.InParallel;
import trimwright.prepare.Sections;
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
     * @param swings the boat in time; none on the hulls and where her state is not found again
     * @param steady the target of the same kind in the new wind; null where there is none
     */
    public record Gust(
            GustRow row, List<Swing> swings, @Nullable TargetPoint steady) {
        public Gust {
            swings = List.copyOf(swings);
        }

        /** The boat in one shape of the gust; null where she was not sailed through it. */
        @Nullable
        Swing find(GustShape shape) {
            return swings.stream()
                    .filter(swing -> swing.nobody().shape() == shape)
                    .findFirst()
                    .orElse(null);
        }
    }

    /**
     * One shape of a gust in time.
     *
     * @param nobody with nobody moving
     * @param firstAct with the card's first act, a hand's reaction late
     */
    public record Swing(GustSwing nobody, GustSwing firstAct) {}

    /** Gusts at the targets asked for, from a book that has the winds; empty where none is solved. */
    public static List<PointGusts> of(GustRequest request, Sections sections, TargetBook book)
            throws InterruptedException {
        Platform platform = TargetRun.platformOf(request.file().boat(), request.wing(), sections);
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
        GustWatch watch = point.isFoiling() ? GustWatch.at(platform, TargetRun.AIR, TargetRun.water(), point) : null;
        List<Gust> gusts = new ArrayList<>();
        for (GustRequest.Change asked : request.changes()) {
            double shift = Units.fromDegrees(asked.shiftDeg());
            GustRow row = card.rowOf(point, Units.fromKnots(asked.windKn()), shift);
            if (row != null) {
                TargetPoint steady =
                        find(book, point.mode(), request.windAfter(asked.windKn()), point.trueWindAngle() + shift);
                gusts.add(new Gust(row, swings(watch, row), steady));
            }
        }
        return new PointGusts(point, gusts);
    }

    /** Each shape with nobody moving and with the first act. */
    private static List<Swing> swings(@Nullable GustWatch watch, GustRow row) {
        List<Swing> swings = new ArrayList<>();
        if (watch != null) {
            GustAct first = row.first();
            for (GustShape shape : GustShape.values()) {
                swings.add(new Swing(
                        watch.swing(row.change(), row.shift(), shape, null),
                        watch.swing(row.change(), row.shift(), shape, first)));
            }
        }
        return swings;
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
