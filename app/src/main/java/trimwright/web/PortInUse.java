package trimwright.web;

/** The port that was asked for belongs to another program. */
public final class PortInUse extends RuntimeException {
    private static final long serialVersionUID = 1L;

    PortInUse(int port, Throwable cause) {
        super(
                "Port " + port + " on 127.0.0.1 is in use by another program. "
                        + "Choose another with --port, or --port 0 for any free one.",
                cause);
    }
}
