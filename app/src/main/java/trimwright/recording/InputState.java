package trimwright.recording;

/** How an input stands. */
public enum InputState {
    /** Open, nothing came yet, or nobody is connected. */
    WAITING,
    /** Connected. */
    CONNECTED,
    /** Lost or refused; it is tried again after a while. */
    LOST
}
