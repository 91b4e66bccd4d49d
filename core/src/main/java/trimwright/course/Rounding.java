package trimwright.course;

/** On which side of the boat a mark is left. */
public enum Rounding {
    PORT,
    STARBOARD
}
