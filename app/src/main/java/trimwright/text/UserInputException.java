package trimwright.text;

/**
 * What a person gave is wrong: exit code 2, HTTP 400. The message is one line that says what, where and what to do; a
 * file with several faults has one line for each.
 */
public final class UserInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public UserInputException(String message) {
        super(message);
    }

    public UserInputException(String message, Throwable cause) {
        super(message, cause);
    }
}
