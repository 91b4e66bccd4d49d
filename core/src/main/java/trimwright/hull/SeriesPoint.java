package trimwright.hull;

import trimwright.water.Wetting;

/** Form factor and wave-making of the series at one point, with their slopes. {@link RoundBilgeSeries} fills it. */
final class SeriesPoint {
    /** Over this much the form drag of ever more slender hulls fades to none (-), chosen. */
    private static final double FADE = 0.02;

    final double slenderness;
    final double paired;
    private final double logarithm;

    /** Form factor (-): alone or as a pair, or between. */
    final double form;

    final double formBySlenderness;
    final double formByPaired;

    /** Wave-making coefficient on wetted area (-). */
    double waves;

    double wavesByFroude;
    double wavesBySlenderness;
    double wavesByPaired;

    SeriesPoint(double slenderness, double paired) {
        this.slenderness = slenderness;
        this.paired = paired;
        logarithm = StrictMath.log(slenderness);
        double fall = power(RoundBilgeSeries.FORM_POWER);
        double factor = RoundBilgeSeries.ALONE + paired * (RoundBilgeSeries.PAIRED - RoundBilgeSeries.ALONE);
        double over = factor * fall - 1;
        double slope = Wetting.lengthSlope(over, FADE);
        form = 1 + Wetting.length(over, FADE);
        formBySlenderness = slope * RoundBilgeSeries.FORM_POWER * factor * fall / slenderness;
        formByPaired = slope * (RoundBilgeSeries.PAIRED - RoundBilgeSeries.ALONE) * fall;
    }

    /** Slenderness to a power. */
    double power(double exponent) {
        return StrictMath.exp(exponent * logarithm);
    }

    void addWaves(double weight, double weightSlope, double value, double bySlenderness, double byPaired) {
        waves += weight * value;
        wavesByFroude += weightSlope * value;
        wavesBySlenderness += weight * bySlenderness;
        wavesByPaired += weight * byPaired;
    }

    /** The slopes so far are over the place between nodes: this many of them to a Froude number of one. */
    void endWaves(double nodes) {
        wavesByFroude *= nodes;
    }
}
