package trimwright.call;

/**
 * A call, with the state that made it.
 *
 * @param timeNanos when (ns since 1970 UTC)
 * @param kind what it asks for
 * @param degrees by how much, whole degrees; 0 where it is not told
 * @param lost how far speed lay under what is reachable, mean of 20 s (m/s)
 * @param lostError standard error of that (m/s)
 * @param value of what shall change, mean of 20 s (rad, or N m for the moment)
 * @param aim of it (rad, N m)
 * @param promise what the change is worth by the model (m/s); NaN for the moment
 */
public record Call(
        long timeNanos,
        CallKind kind,
        int degrees,
        double lost,
        double lostError,
        double value,
        double aim,
        double promise) {}
