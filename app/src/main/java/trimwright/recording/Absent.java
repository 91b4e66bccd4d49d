package trimwright.recording;

/** A value that is not known: null in the protocol. */
public enum Absent {
    VALUE
}
