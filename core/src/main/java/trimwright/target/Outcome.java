package trimwright.target;

/** What a sweep found at an angle. */
enum Outcome {
    NOT_TRIED,
    FOUND,
    /** Only on the hulls: the best state there is lifted off them. */
    TAKES_OFF,
    NONE,
    /** Only on the hulls: no trim keeps the air on the wing, and with it stalled the boat stays on them. */
    STALLED
}
