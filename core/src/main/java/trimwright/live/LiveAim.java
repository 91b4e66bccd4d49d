package trimwright.live;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.live.LiveFigures.Estimate;
import trimwright.response.ReachableSpeed;
import trimwright.response.SpeedResponse;

/**
 * Speed against what is reachable, second by second. The wind is some seconds old when it is found, so that speed is
 * judged as it was then: else each lull would read as slow until the wind is known.
 */
final class LiveAim {
    /** Seconds of boat speed, of target, and of the tail that is shown (chosen). */
    static final int SPEED_SECONDS = 10;

    private static final int TARGET_SECONDS = 30;
    private static final int TAIL_SECONDS = 20;

    /** Age of the wind's middle when it is found, in whole seconds: half a block, and what must lie behind it. */
    private static final int DELAY = 3;

    /** Fewest seconds that make a mean (chosen). */
    static final int FEWEST = 5;

    private final @Nullable SpeedResponse response;
    private final @Nullable ReachableSpeed reachable;
    private final LiveSpan late = new LiveSpan(DELAY + 1);
    private final LiveSpan speeds = new LiveSpan(SPEED_SECONDS);
    private final LiveSpan targets = new LiveSpan(TARGET_SECONDS);
    private final LiveSpan reached = new LiveSpan(SPEED_SECONDS);
    private final LiveSpan errors = new LiveSpan(SPEED_SECONDS);
    private final LiveSpan tail = new LiveSpan(TAIL_SECONDS);

    LiveAim(@Nullable SpeedResponse response) {
        this.response = response;
        reachable = response == null ? null : new ReachableSpeed(response);
    }

    /** Begins anew: a mean over a turn says nothing about the straight line behind it. */
    void clear() {
        List.of(late, speeds, targets, reached, errors, tail).forEach(LiveSpan::clear);
        if (reachable != null) {
            reachable.forget();
        }
    }

    /**
     * Takes a second.
     *
     * @param speed mean of the second (m/s)
     * @param target at the angle sailed (m/s), with the error that the wind's makes in it
     * @param wind true (m/s)
     * @param angle of it from the course (rad)
     */
    void add(double speed, Estimate target, double wind, double angle) {
        late.add(speed);
        double then = late.oldest(DELAY + 1);
        speeds.add(then);
        targets.add(target.value());
        if (reachable != null && response != null) {
            double now = reachable.step(then, target.value(), wind, angle, 1);
            reached.add(now);
            // The response's own spread is the most that was seen: taken for two standard errors.
            double spread = Double.isNaN(target.value())
                    ? Double.NaN
                    : now * response.at(wind, angle).spread() / 2;
            errors.add(StrictMath.hypot(spread, target.error()));
        } else {
            errors.add(target.error());
        }
        tail.add(share().value());
    }

    private Estimate share() {
        double against = reachable == null ? targets.mean(FEWEST) : reached.mean(FEWEST);
        double value = speeds.mean(FEWEST) / against;
        return new Estimate(value, value * errors.mean(FEWEST) / against);
    }

    LiveFigures.Aim figures() {
        Estimate now = reachable == null ? Estimate.NONE : new Estimate(reached.mean(FEWEST), errors.mean(FEWEST));
        return new LiveFigures.Aim(targets.mean(FEWEST), now, share(), tail.toList());
    }
}
