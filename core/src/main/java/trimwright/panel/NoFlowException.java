package trimwright.panel;

/** The flow about these elements cannot be computed; the message says why, for a person. */
public final class NoFlowException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NoFlowException(String message) {
        super(message);
    }
}
