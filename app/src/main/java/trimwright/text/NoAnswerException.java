package trimwright.text;

/** The physics has no answer to the question: exit code 3, HTTP 422. The message says what has none and why. */
public final class NoAnswerException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NoAnswerException(String message) {
        super(message);
    }
}
