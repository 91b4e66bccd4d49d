package trimwright.drills;

import java.util.List;
import java.util.stream.LongStream;
import trimwright.boat.WingSpec;
import trimwright.crew.ComputedHand;
import trimwright.crew.EasedHand;
import trimwright.crew.Habits;
import trimwright.crew.WingHand;
import trimwright.practice.DrillSetup;
import trimwright.practice.StartTask;
import trimwright.prepare.InParallel;
import trimwright.start.LineTimes;
import trimwright.start.StartSetup;
import trimwright.start.StartTrial;
import trimwright.start.StartingHand;

/** Computed hands before a start: one knows how long the boat needs to the line, one divides the way by the speed of now. */
final class StartHands {
    /** Boats from whose answers the one knows it: chosen. */
    private static final int BOATS = 6;

    /** First of the numbers of these boats' gusts, none of a drill's. */
    private static final long FIRST = 9001;

    /** How much later than it believes each goes, so as not to be over early (s): chosen. */
    private static final double LATE = 2.5;

    private StartHands() {}

    static WingHand of(Pilot pilot, DrillSetup setup, StartTask task) {
        WingSpec wing = setup.wing();
        if (pilot == Pilot.REFERENCE) {
            ComputedHand hand = new ComputedHand(wing, Habits.NONE, 1);
            StartSetup asked = asked(setup, task);
            List<StartTrial> trials = trials(asked);
            LineTimes times = LineTimes.of(asked, StartPlanRun.asked(trials));
            double drops = trials.stream()
                    .mapToDouble(StartTrial::dropped)
                    .filter(Double::isFinite)
                    .average()
                    .orElse(0);
            return new StartingHand(
                    hand,
                    hand::power,
                    (speed, metres) -> times.to(speed, metres).low() - LATE,
                    drops,
                    task);
        }
        EasedHand hand = new EasedHand(pilot.hand(wing), wing.trim().sheetMax());
        return new StartingHand(hand, hand::power, (speed, metres) -> metres / Math.max(1, speed) - LATE, 0, task);
    }

    private static StartSetup asked(DrillSetup setup, StartTask task) {
        return new StartSetup(
                setup.boat(),
                setup.wing(),
                setup.aims(),
                setup.air(),
                setup.water(),
                setup.wind(),
                setup.drill().intensity(),
                task.angle());
    }

    private static List<StartTrial> trials(StartSetup asked) {
        List<Long> numbers = LongStream.range(FIRST, FIRST + BOATS).boxed().toList();
        try {
            return InParallel.map("start", numbers, number -> new StartTrial(asked, number));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the drill was interrupted", e);
        }
    }
}
