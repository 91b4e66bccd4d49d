package trimwright.course;

/** On which side a mark is left. */
public enum Side {
    PORT,
    STARBOARD
}
