package trimwright.section;

/** Intermediate values of {@link AttachedFlow}, in its own names. */
final class AttachedState {
    // Of flap angle and Reynolds number.
    double logRe;
    double logReR;
    double d;
    double dD;
    double nose;
    double noseR;
    double scale;

    // Of the angle of attack too.
    double theta;
    double thetaD;
    double maxA;
    double maxD;
    double maxR;
    double load;
    double loadA;
    double loadD;
    double q;
    double size;
}
