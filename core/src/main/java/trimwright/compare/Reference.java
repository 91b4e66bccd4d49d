package trimwright.compare;

import trimwright.segment.PointOfSail;

/** What a boat's progress is held against. Rates are NaN where it says nothing. */
public sealed interface Reference permits TargetReference, OwnBestReference {
    /** The name in files. */
    String key();

    /**
     * Progress of the reference.
     *
     * @param value (m/s), NaN where it says nothing
     * @param isDoubtful whether what it says is itself to be doubted
     */
    record Rate(double value, boolean isDoubtful) {
        static final Rate NONE = new Rate(Double.NaN, false);
    }

    /**
     * Progress that the reference makes in a wind: VMG up or down it, or on a reach the speed towards the mark.
     *
     * @param tws at 10 m (m/s)
     * @param twaToMark wind from the way to the mark (rad); used on reaches only
     */
    Rate rate(PointOfSail on, double tws, double twaToMark);

    /**
     * Progress (m/s) that the reference would make at the angle sailed.
     *
     * @param courseTwa wind from the course sailed (rad)
     * @param offMark course sailed less the way to the mark (rad); used on reaches only
     */
    double rateAtAngle(PointOfSail on, double tws, double courseTwa, double offMark);
}
