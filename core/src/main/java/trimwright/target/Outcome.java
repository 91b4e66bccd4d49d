package trimwright.target;

/** What a sweep found at an angle. */
enum Outcome {
    NOT_TRIED,
    FOUND,
    /** Only on the hulls: the best state there is lifted off them. */
    TAKES_OFF,
    NONE
}
