package trimwright.start;

/**
 * How she went while she was held back on a share of her power.
 *
 * @param power share of full power (-)
 * @param speed mean through the water (m/s)
 * @param least slowest (m/s)
 * @param wet share of the time in which a hull carried weight (-)
 * @param capsized share of the runs in which she went over (-)
 */
public record Held(double power, double speed, double least, double wet, double capsized) {
    /** Off the foils from this share of the time on (-): chosen. */
    private static final double OFF = 0.5;

    /** On the foils up to this share of the time (-): chosen, a touch now and then. */
    private static final double ON = 0.05;

    public boolean isOnFoils() {
        return wet <= ON && capsized == 0;
    }

    public boolean isOffFoils() {
        return wet >= OFF && capsized == 0;
    }
}
