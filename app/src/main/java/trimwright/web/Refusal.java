package trimwright.web;

/**
 * A request that gets one sentence instead of an answer, for reasons that only a server has. What is typed wrongly is a
 * {@link trimwright.text.UserInputException} here as everywhere.
 */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;

    private Refusal(int status, String sentence) {
        super(sentence);
        this.status = status;
    }

    /** The request does not come from one of our own pages (HTTP 403). */
    static Refusal forbidden(String sentence) {
        return new Refusal(403, sentence);
    }

    /** There is no such thing (HTTP 404). */
    static Refusal notFound(String sentence) {
        return new Refusal(404, sentence);
    }

    int status() {
        return status;
    }

    /** The sentence for the reader; never null. */
    String sentence() {
        return String.valueOf(getMessage());
    }
}
