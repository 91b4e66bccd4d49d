package trimwright.practice;

import org.jspecify.annotations.Nullable;

/**
 * Adds up a start. Seconds lost are the way behind a boat that crossed the line at the gun at the card's speed; who crossed before
 * it has to come back.
 */
final class StartTally {
    /** What coming back costs (s): chosen, two turns and the way back. */
    private static final double COMING_BACK = 30;

    private final StartTask task;
    private double along;
    private double since;
    private double best;
    private double crossed = Double.NaN;
    private DrillResult.@Nullable Started started;

    StartTally(StartTask task) {
        this.task = task;
    }

    void add(double time, double speed, double progress, double bestProgress, double dt) {
        if (started == null && time >= task.gun()) {
            started = new DrillResult.Started(Double.NaN, task.metres() - along, speed);
        }
        along += progress * dt;
        if (Double.isNaN(crossed) && along >= task.metres()) {
            crossed = time + dt;
        }
        if (time >= task.gun()) {
            best += bestProgress * dt;
            since += dt;
        }
    }

    double toGun(double time) {
        return task.gun() - time;
    }

    double toLine() {
        return task.metres() - along;
    }

    double lost() {
        double behind = since <= 0 ? 0 : (best - (along - task.metres())) / (best / since);
        // What she was ahead by having started early is nothing won.
        return crossed < task.gun() ? COMING_BACK + Math.max(0, behind) : behind;
    }

    /** Null before the gun. */
    DrillResult.@Nullable Started result() {
        DrillResult.Started at = started;
        return at == null ? null : new DrillResult.Started(crossed - task.gun(), at.metres(), at.speed());
    }
}
