package trimwright.store;

/** The library cannot do what the user asked; the message is the one line that the user reads. */
public final class LibraryFault extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final String line;

    public LibraryFault(String line) {
        super(line);
        this.line = line;
    }

    @Override
    public String getMessage() {
        return line;
    }
}
