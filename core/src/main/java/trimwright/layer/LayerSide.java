package trimwright.layer;

/** Side of an element as its layer sees it: from the stagnation point to the trailing edge. */
public enum LayerSide {
    UPPER,
    LOWER
}
