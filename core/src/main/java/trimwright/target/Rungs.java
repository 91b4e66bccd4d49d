package trimwright.target;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.air.WindProfile;
import trimwright.platform.Conditions;
import trimwright.target.search.Answer;

/**
 * Foiling answers on the way from an easy wind, each found from the one before. Each depends on boat and held controls alone, so
 * all winds of a book may ask for them, on any thread, in any order.
 */
final class Rungs {
    /** Winds (m/s) in which a guess leads to an answer most surely; chosen, tried in this order. */
    static final double[] EASY = {7.2, 9, 6};

    /** True wind angles (rad) at which most boats foil first; chosen. */
    static final double[] ANGLES = {1.8, 1.65, 2.0};

    /** Winds follow each other by at most this ratio; chosen. */
    private static final double STEP = 1.22;

    /** To more wind, or to less by half as long steps. */
    enum Way {
        UP(STEP),
        DOWN(1 / Math.sqrt(STEP));

        private final double ratio;

        Way(double ratio) {
            this.ratio = ratio;
        }

        /** Wind (m/s) after so many steps. */
        double windAfter(double easy, int steps) {
            double wind = easy;
            for (int i = 0; i < steps; i++) {
                wind *= ratio;
            }
            return wind;
        }

        /** Whether a wind comes before another on this way. */
        boolean isBefore(double wind, double other) {
            return this == UP ? wind < other : wind > other;
        }
    }

    private record Place(Way way, double easy, double angle, int steps) {}

    private record Found(@Nullable Answer answer) {}

    private final Task task;
    private final Map<Place, Found> known = new HashMap<>();

    /** @param task gives boat, branch, held controls and the side of the wind */
    Rungs(Task task) {
        this.task = task;
    }

    /** The answer so many steps from an easy wind, or null where there is none on the way. */
    @Nullable
    synchronized Answer at(Way way, double easy, double angle, int steps) {
        Place place = new Place(way, easy, angle, steps);
        Found found = known.get(place);
        if (found == null) {
            found = new Found(find(way, easy, angle, steps));
            known.put(place, found);
        }
        return found.answer;
    }

    private @Nullable Answer find(Way way, double easy, double angle, int steps) {
        Task there = in(way.windAfter(easy, steps));
        if (steps == 0) {
            return cold(there, angle);
        }
        Answer before = at(way, easy, angle, steps - 1);
        return before == null ? null : next(there, angle, before);
    }

    private Task in(double wind) {
        Conditions own = task.conditions();
        return task.in(new Conditions(WindProfile.overSea(wind), own.windward(), own.foils()));
    }

    /** The answer of a task from a guess, or null. */
    static @Nullable Answer cold(Task task, double angle) {
        double wind = task.conditions().wind().referenceSpeed();
        Answer answer = task.atAngle(angle, FirstGuess.foiling(task.platform(), wind, angle));
        return answer.isConverged() ? answer : null;
    }

    /** The answer of a task from that in a neighbouring wind, or null. */
    static @Nullable Answer next(Task task, double angle, Answer before) {
        Answer answer = task.atAngle(angle, before.x(), before);
        return answer.isConverged() ? answer : null;
    }
}
