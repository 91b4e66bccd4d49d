package trimwright.prepare;

import java.util.List;
import trimwright.air.AirState;
import trimwright.boat.Boat;
import trimwright.boat.WingSpec;
import trimwright.platform.Platform;
import trimwright.section.SectionFamily;
import trimwright.target.TargetBook;
import trimwright.target.TargetFinder;
import trimwright.target.TargetGrid;
import trimwright.target.TargetPoint;
import trimwright.text.Progress;
import trimwright.units.Units;
import trimwright.water.WaterState;
import trimwright.wing.Wing;

/**
 * Computes target books on a fixed pool of threads, one wind a task. No task sees another's work, so the book is the same
 * on any number of threads.
 */
public final class TargetRun {
    /** Temperature of air and sea (K): that of the standard atmosphere at sea level, ISO 2533. */
    private static final double TEMPERATURE = Units.fromCelsius(15);

    /** Air that books are made for. */
    public static final AirState AIR = AirState.STANDARD;

    private TargetRun() {}

    /** Sea that books are made for. */
    public static WaterState water() {
        return WaterState.sea(TEMPERATURE);
    }

    /** The boat and wing in the air and water that books are made for. */
    public static Platform platformOf(Boat boat, WingSpec wing) {
        return new Platform(boat, wing, AIR, water());
    }

    /** The same with other sections than those in closed form. */
    public static Platform platformOf(Boat boat, WingSpec wing, Sections sections) {
        return new Platform(boat, wing, sections.family(), AIR, water());
    }

    private static Platform platformOf(TargetRequest request, SectionFamily sections) {
        return new Platform(
                request.boat().boat(), request.wing(), sections, AirState.STANDARD, WaterState.sea(TEMPERATURE));
    }

    /** Steps that {@link Progress} is told about: one a wind. */
    public static long steps(TargetRequest request) {
        return request.grid().winds().size();
    }

    /** The book of sections in closed form, on as many threads as there are processors. */
    public static TargetBook of(TargetRequest request, Progress progress) throws InterruptedException {
        return of(request, Runtime.getRuntime().availableProcessors(), progress);
    }

    /** The book of sections in closed form, on that many threads. */
    public static TargetBook of(TargetRequest request, int threads, Progress progress) throws InterruptedException {
        if (request.section() != SectionSource.CLOSED_FORM) {
            throw new IllegalArgumentException("a book of " + request.section() + " sections needs these");
        }
        return of(request, SectionFamily.closedForm(Wing.aspectRatio(request.wing())), threads, progress);
    }

    /** The book of a wing of such sections, on that many threads. */
    static TargetBook of(TargetRequest request, SectionFamily sections, int threads, Progress progress)
            throws InterruptedException {
        TargetFinder finder = new TargetFinder(platformOf(request, sections), request.held(), request.foils());
        TargetGrid grid = request.grid();
        return finder.assemble(grid, InParallel.map("targets", threads, grid.winds(), wind -> {
            List<TargetPoint> points = finder.pointsAt(wind, grid.angles());
            progress.done(1);
            return points;
        }));
    }
}
