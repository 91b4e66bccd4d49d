package trimwright.drills;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.LongStream;
import trimwright.aim.Gustiness;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.prepare.InParallel;
import trimwright.start.LineBook;
import trimwright.start.LineTimes;
import trimwright.start.StartPlanner;
import trimwright.start.StartSetup;
import trimwright.start.StartTrial;
import trimwright.target.TargetBook;
import trimwright.units.Units;

/** Seconds to the line over winds and courses, from boats in gusts: what Live counts spare seconds by. */
public final class LineBookRun {
    /** Winds (kn) and courses across the line (deg from the wind) of the book: chosen, between them it is a straight line. */
    private static final List<Double> WINDS_KN = List.of(11.0, 14.0, 17.0, 20.0);

    private static final List<Double> ANGLES_DEG = List.of(50.0, 75.0, 100.0, 125.0);

    /** Boats in each cell: chosen. */
    private static final int BOATS = 5;

    private LineBookRun() {}

    /** The book of that boat; half a minute to a minute of work, one cell a task. */
    public static LineBook of(BoatFile file, WingSpec wing, TargetBook book) throws InterruptedException {
        List<StartSetup> cells = new ArrayList<>();
        for (double wind : WINDS_KN) {
            for (double angle : ANGLES_DEG) {
                cells.add(DrillBoats.start(
                        file, wing, book, Units.fromKnots(wind), Gustiness.TURBULENCE, Units.fromDegrees(angle)));
            }
        }
        List<LineTimes> times = InParallel.map("line", cells, cell -> LineTimes.of(cell, new Boats(cell)));
        List<List<LineTimes>> rows = new ArrayList<>();
        for (int i = 0; i < WINDS_KN.size(); i++) {
            rows.add(times.subList(i * ANGLES_DEG.size(), (i + 1) * ANGLES_DEG.size()));
        }
        return new LineBook(
                WINDS_KN.stream().map(Units::fromKnots).toList(),
                ANGLES_DEG.stream().map(Units::fromDegrees).toList(),
                rows);
    }

    private static final class Boats implements StartPlanner.Trials {
        private final List<StartTrial> trials;

        Boats(StartSetup setup) {
            trials = LongStream.rangeClosed(1, BOATS)
                    .mapToObj(seed -> new StartTrial(setup, seed))
                    .toList();
        }

        @Override
        public <T> List<T> all(Function<StartTrial, T> question) {
            return trials.stream().map(question).toList();
        }
    }
}
