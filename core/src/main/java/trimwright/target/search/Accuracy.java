package trimwright.target.search;

/**
 * When a search has converged: no equation or limit is broken by more than {@code broken}, and the next step is below
 * {@code step} and promises less than {@code gain}; all scaled.
 */
public record Accuracy(double broken, double step, double gain) {
    /** For answers that are kept. */
    public static final Accuracy FINE = new Accuracy(1e-9, 1e-3, 1e-9);

    /** For ends of ranges: a thousandth of a large change. */
    public static final Accuracy ROUGH = new Accuracy(1e-6, 1e-2, 1e-3);
}
