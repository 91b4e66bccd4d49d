package trimwright.section;

/** Intermediate values of {@link AttachedFlow}, in its own names. */
final class AttachedState {
    // Of flap angle and Reynolds number.
    double logRe;
    double logReR;
    double d;
    double dD;
    double sinTurn;
    double cosTurn;
    double sinNose;
    double cosNose;
    double nose;
    double noseR;
    double scale;

    // Of the angle of attack too.
    double sin;
    double cos;
    double thetaD;
    double maxA;
    double maxD;
    double maxR;
    double load;
    double loadA;
    double loadD;
    double q;
}
