package trimwright.calibration;

import java.util.List;

/** What a session says of one boat's instruments. */
public sealed interface Calibration {
    /** Name of the boat. */
    String boat();

    /**
     * What was found.
     *
     * @param estimates of all unknowns that its log speaks of
     * @param ties that are worth naming, the closest first
     * @param together unknowns that cannot be told apart
     * @param upwash how upwash goes with wind and trim
     * @param leeway ratio of pressures that leeway is given for (-)
     * @param winds of each stretch as read and as corrected
     */
    record Found(
            String boat,
            List<Estimate> estimates,
            List<Tie> ties,
            List<Combination> together,
            UpwashBasis upwash,
            double leeway,
            List<BlockWind> winds)
            implements Calibration {
        public Found {
            estimates = List.copyOf(estimates);
            ties = List.copyOf(ties);
            together = List.copyOf(together);
            winds = List.copyOf(winds);
        }

        /** What is to be taken off: what is told, nothing else. */
        public Correction correction() {
            return new Correction(
                    boat, estimates.stream().filter(Estimate::isTold).toList(), upwash, leeway);
        }
    }

    /**
     * Nothing can be told.
     *
     * @param port seconds of straight sailing with the wind from port
     * @param starboard the same from starboard
     */
    record Refused(String boat, Reason reason, double port, double starboard) implements Calibration {}

    /** Why nothing can be told. */
    enum Reason {
        /** Apparent wind, heading or speed is missing. */
        NOT_LOGGED,
        /** Hardly any straight sailing. */
        TOO_SHORT,
        /** The wind came from one side only: an offset, upwash and a turn of the wind look the same. */
        ONE_TACK
    }
}
